/** When a measure falls due again: from its planned day, and from what was measured since. */
import { describe, expect, it } from 'vitest';
import { type RetestPlan, retestConsistent, retestsDue } from '#core/assessment/retest-plan.ts';

const plan = (over: Partial<RetestPlan> = {}): RetestPlan => ({
  measure: 'six-minute-walk',
  setOn: '2026-03-02',
  dueOn: '2026-04-13',
  reason: null,
  everyDays: 42,
  ...over,
});
const dueOn = (of: RetestPlan, ...days: readonly string[]) =>
  retestsDue(
    [of],
    days.map((day) => ({ kind: 'six-minute-walk', day })),
  )[0]?.on;

describe('a re-test', () => {
  it.each([
    ['nothing measured', [], '2026-04-13'],
    ['measured before the plan was set', ['2026-03-01'], '2026-04-13'],
    ['measured on the day it was set', ['2026-03-02'], '2026-04-13'],
    ['measured 8 days early', ['2026-04-05'], '2026-04-13'],
    ['measured 7 days early', ['2026-04-06'], '2026-05-18'],
    ['measured on its day', ['2026-04-13'], '2026-05-25'],
    ['measured late', ['2026-04-20'], '2026-06-01'],
    ['measured twice', ['2026-06-01', '2026-04-20'], '2026-07-13'],
  ])('%s', (_, days, due) => {
    expect(dueOn(plan(), ...days)).toBe(due);
  });

  it('planned once is done once measured, and stays on the list as done', () => {
    expect(dueOn(plan({ everyDays: null }), '2026-04-13')).toBeNull();
    expect(dueOn(plan({ everyDays: null }))).toBe('2026-04-13');
  });

  it('of another measure is not done by this one', () => {
    const other = retestsDue([plan({ measure: 'grip' })], [{ kind: 'six-minute-walk', day: '2026-04-13' }]);
    expect(other).toMatchObject([{ on: '2026-04-13', lastOn: null }]);
  });

  it('that was stopped is not listed', () => {
    expect(retestsDue([plan({ dueOn: null, everyDays: null })], [])).toEqual([]);
  });
});

it.each([
  ['2026-03-01', 1],
  ['2026-03-02', 0],
  ['2027-03-03', 0],
  ['2027-03-04', 1],
  ['2026-02-30', 1],
])('planned on 2 March 2026 for %s: %i refusals (today to 366 days ahead)', (day, count) => {
  expect(retestConsistent({ dueOn: day }, '2026-03-02')).toHaveLength(count);
});
