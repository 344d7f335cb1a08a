/** The private calendar address on the own page: what is said before it is made, and what of it is shown after. */
import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { withRouter } from '#tests/support/with-router.tsx';
import { CalendarAddress, MadeAddress } from '#ui/patient/account/calendar-address.tsx';

const textOf = (page: ReactNode) =>
  renderToStaticMarkup(withRouter(page))
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
const at = Date.UTC(2026, 2, 10, 17, 42);
const shown = (feed: Parameters<typeof CalendarAddress>[0]['feed']) =>
  textOf(<CalendarAddress feed={feed} zone="Europe/Lisbon" provenBy="pin" />);

describe('the private calendar address', () => {
  it('says before anything who can read it, that nothing of the health is in it, and that it can be ended', () => {
    const text = shown(null);
    for (const words of ['without a PIN', 'Nothing about your health', 'You can end it here at any time'])
      expect(text).toContain(words);
    expect(text).not.toContain('End the address');
  });

  it.each([
    ['never read', { madeAt: at, lastReadAt: null, ended: null }, 'No calendar has read it yet', true],
    [
      'read',
      { madeAt: at, lastReadAt: at, ended: null },
      'Last read by a calendar about 10 Mar 2026, 17:42',
      true,
    ],
    ['ended', { madeAt: at, lastReadAt: at, ended: { at, by: 'clinic' } }, 'Your clinic ended it', false],
  ] as const)('%s: says so, and can be ended only while it is in use', (_, feed, words, canEnd) => {
    const text = shown(feed);
    expect(text).toContain(words);
    expect(text.includes('End the address')).toBe(canEnd);
  });

  it('is shown whole once made, with a way into a calendar, and as shown this one time', () => {
    const html = renderToStaticMarkup(
      <MadeAddress origin="https://clinic.example" path="/calendar/secret.ics" />,
    );
    expect(html).toContain('https://clinic.example/calendar/secret.ics');
    expect(html).toContain('href="webcal://clinic.example/calendar/secret.ics"');
    expect(html).toContain('this one time');
  });
});
