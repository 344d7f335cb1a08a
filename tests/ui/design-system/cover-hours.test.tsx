/** Who reads answers when: said at sign-in, on today and at the end of a session, with the clinic's own hours. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { asTyped } from '#messages/text.ts';
import { SignInForm } from '#ui/account/sign-in/sign-in-form.tsx';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { DonePage } from '#ui/patient/session/pages/end-pages.tsx';
import { begin } from '../patient/session-play.ts';
import { today } from '../patient/views.ts';

const clinic = { ...today().clinic, monitoringHours: asTyped('Tuesday and Thursday, 13:00 to 15:20.') };
const nothing = () => undefined;
const textOf = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ');

const places = [
  [
    'the end of a session that has arrived',
    <DonePage key="sent" draft={begin()} clinic={clinic} arrival="stored" onHome={nothing} />,
  ],
  [
    'the end of a session that waits on the phone',
    <DonePage key="kept" draft={begin()} clinic={clinic} arrival="kept" onHome={nothing} />,
  ],
  [
    'signing in where the clinic is known',
    <SignInForm key="known" hasPasskeys={false}>
      <MonitoringHours clinic={clinic} />
    </SignInForm>,
  ],
] as const;

describe('who reads answers when', () => {
  it.each(places)('%s: the clinic’s own hours, and that nobody reads answers outside them', (_name, page) => {
    const text = textOf(renderToStaticMarkup(page));
    expect(text).toContain('Tuesday and Thursday, 13:00 to 15:20.');
    expect(text).toContain('Nobody reads your answers outside these hours.');
    expect(text).toContain(clinic.emergencyNumber);
  });

  it('signing in where the clinic is not known yet: that nobody reads answers all the time', () => {
    const text = textOf(renderToStaticMarkup(<SignInForm hasPasskeys={false} />));
    expect(text).toContain('Your clinic does not read answers around the clock.');
  });
});
