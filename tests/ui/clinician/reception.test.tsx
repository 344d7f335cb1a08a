/** The front desk’s page: who comes when, how to reach them, and nothing else. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { PersonLine } from '#ui/clinician/reception/answers.ts';
import { ReceptionScreen } from '#ui/clinician/reception/reception-screen.tsx';

const person = (over: Partial<PersonLine> = {}): PersonLine => ({
  patientId: 'p1',
  givenName: 'Odo',
  familyName: 'Tessaly',
  birthDay: '1961-04-09',
  phone: '020 913 0199',
  next: { day: '2026-04-21', time: '09:30', place: 'Room 2' },
  ...over,
});

const page = (props: Partial<Parameters<typeof ReceptionScreen>[0]>) =>
  renderToStaticMarkup(
    <ReceptionScreen day="2026-04-20" name="" found={null} appointments={[]} {...props} />,
  );

describe('the front desk', () => {
  it('lists appointments under their day, each with a number to ring', () => {
    const html = page({
      appointments: [
        person(),
        person({ patientId: 'p2', next: { day: '2026-04-22', time: null, place: null } }),
      ],
    });
    expect(html.match(/<h2/g)).toHaveLength(2);
    expect(html).toMatch(/Tuesday,? 21 April 2026/);
    expect(html).toContain('09:30, Room 2');
    expect(html).toContain('href="tel:0209130199"');
    expect(html).toContain('href="/reception/p2"');
  });

  it('says that nobody is booked, that nobody has the name, and that a number is missing', () => {
    expect(page({})).toContain('No appointment is booked');
    expect(page({ name: 'zz', found: { people: [], more: 0 } })).toContain('Nobody of that name');
    const found = { people: [person({ phone: null, next: null })], more: 3 };
    const html = page({ name: 'od', found });
    expect(html).toContain('no telephone recorded');
    expect(html).toContain('no appointment');
    expect(html).toContain('3 more have that in their name');
  });

  it('searches without scripts, by an address that can be called again', () => {
    expect(page({})).toMatch(/<form[^>]* method="get"/);
  });
});
