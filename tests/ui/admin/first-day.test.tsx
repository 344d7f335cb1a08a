/** The first-day list on the page: what is open says what follows and leads to where it is done. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { type ClinicStart, firstDayList } from '#core/clinic/first-day-list.ts';
import { FirstDay } from '#ui/admin/first-day.tsx';

const ready: ClinicStart = {
  name: 'Harbour Clinic',
  phone: '020 913 0140',
  urgentNumber: '116 117',
  monitoringHours: [{ days: ['Mon'], from: '08:00', to: '12:00' }],
  coveringClinician: { name: 'Piotr', isActive: true },
  clinicians: 2,
  ownWordings: 7,
  wordings: 7,
};
const shown = (start: Partial<ClinicStart>): string =>
  renderToStaticMarkup(<FirstDay jobs={firstDayList({ ...ready, ...start })} />);

describe('the first-day list on the page of the administration', () => {
  it('is gone once all of it is done', () => {
    expect(shown({})).toBe('');
  });

  it.each([
    [{ urgentNumber: null }, 'Not entered: urgent number.', 'phones show the emergency number', '#clinic'],
    [{ monitoringHours: [] }, 'No hours are entered.', 'told no times', '#hours'],
    [{ clinicians: 1 }, 'One clinician can sign in.', 'nobody can answer a warning sign', '#add-person'],
    [{ clinicians: 0 }, 'No clinician can sign in.', 'nobody can answer a warning sign', '#add-person'],
    [{ coveringClinician: null }, 'Nobody is named.', 'passes to nobody', '#covering'],
    [
      { coveringClinician: { name: 'Piotr', isActive: false } },
      'Piotr is named and can no longer sign in.',
      'passes to nobody',
      '#covering',
    ],
    [{ ownWordings: 3 }, '3 of 7 wordings', 'nobody at your clinic has approved', '#consents'],
  ])('says of an open job its state, what follows and where to do it: %o', (start, state, follows, href) => {
    const html = shown(start);
    expect(html).toContain('1 of 5 are open');
    expect(html).toContain(state);
    expect(html).toContain(follows);
    expect(html).toMatch(new RegExp(`href="/administration[^"]*${href}"`));
  });
});
