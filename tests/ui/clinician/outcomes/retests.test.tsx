/** The re-test plan as it is read: when each measure is due, its rhythm, and what falls into this week. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import type { RetestDue, RetestStopped } from '#core/assessment/retest-plan.ts';
import { Retests, RetestsThisWeek } from '#ui/clinician/outcomes/retests.tsx';

vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

const retest = (over: Partial<RetestDue> = {}): RetestDue => ({
  measure: 'six-minute-walk',
  title: '6-minute walk',
  on: '2026-03-02',
  everyDays: 42,
  lastOn: '2026-01-19',
  ...over,
});
const day = '2026-03-02';
const shown = (...retests: readonly RetestDue[]) =>
  renderToStaticMarkup(<Retests patientId="p" retests={retests} stopped={[]} day={day} />);
const stopped: RetestStopped = {
  measure: 'six-minute-walk',
  title: '6-minute walk',
  on: '2026-02-27',
  reason: 'Walks with a frame now',
};
const week = (...retests: readonly RetestDue[]) =>
  renderToStaticMarkup(<RetestsThisWeek patientId="p" retests={retests} day={day} />);

describe('the re-test plan', () => {
  it('says that none is planned, and offers to plan one', () => {
    expect(shown()).toMatch(/No re-test is planned\..*Plan a re-test/s);
  });

  it.each([
    ['2026-03-01', 'Due since 1 Mar'],
    ['2026-03-02', 'Due today'],
    ['2026-03-03', 'Due on 3 Mar'],
    [null, 'Measured; nothing further is due'],
  ])('due on %s reads “%s”', (on, words) => {
    expect(shown(retest({ on }))).toContain(words);
  });

  it('names its rhythm and the last measurement, and never takes none for one', () => {
    expect(shown(retest())).toContain('then every 42 days · last measured 19 Jan');
    expect(shown(retest({ everyDays: null, lastOn: null }))).toContain('once · never measured');
  });
});

describe('a re-test that was stopped', () => {
  it('stands with its day and why, beside what is still planned', () => {
    const page = renderToStaticMarkup(<Retests patientId="p" retests={[]} stopped={[stopped]} day={day} />);
    expect(page).toContain('6-minute walk: stopped 27 Feb. Walks with a frame now');
  });
});

describe('beside the planned week', () => {
  it.each([
    ['2026-02-20', true],
    ['2026-03-08', true],
    ['2026-03-09', false],
    [null, false],
  ])('due on %s stands there: %s', (on, isThere) => {
    expect(week(retest({ on })).includes('6-minute walk')).toBe(isThere);
  });
});
