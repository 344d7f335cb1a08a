/** The first session after a break. Its days and what is asked are a clinic's choice: no source. */
import { describe, expect, it } from 'vitest';
import { planFor } from '#core/plan/plan-for.ts';
import { addDays } from '#core/time/day.ts';
import { day, hoursAfter, inputs, versions } from './plan-inputs.ts';

const signedDaysAgo = (days: number, origin: 'clinician' | 'progress' = 'clinician') =>
  versions.map((one) => ({ ...one, signedAt: hoursAfter(-24 * days), origin }));
const longSigned = signedDaysAgo(100);

const plan = (daysAgo: number | null, more: Parameters<typeof inputs>[0] = {}) =>
  planFor(
    inputs({
      versions: longSigned,
      lastSessionOn: daysAgo === null ? null : addDays(day, -daysAgo),
      ...more,
    }),
  );
const today = (of: ReturnType<typeof plan>) => [...new Set(of.items.map((item) => item.today))];

describe('the first session after a break', () => {
  it.each([
    [13, 'as-planned'],
    [14, 'bad-day'],
    [15, 'bad-day'],
    [42, 'bad-day'],
    [0, 'as-planned'],
  ])('%i days after the last is %s, before it is done', (daysAgo, expected) => {
    expect(today(plan(daysAgo))).toEqual([expected]);
  });

  it('is the easier one that was signed, with its reason and the day of the last', () => {
    const [item] = plan(42).items;
    expect(item?.easierSession?.sets).toBe(1);
    expect(item?.reasons).toEqual([{ code: 'gap-easier', today: 'bad-day', lastOn: '2026-01-26' }]);
  });

  it('is not done before the clinic was rung, where the clinic has chosen so', () => {
    const rung = plan(42, { settings: { 'gap-first-session': 1 } });
    expect(today(rung)).toEqual(['none']);
    expect(rung.items[0]?.reasons[0]?.code).toBe('gap-ring-first');
  });

  it.each([
    [7, 6, 'as-planned'],
    [7, 7, 'bad-day'],
    [28, 27, 'as-planned'],
    [28, 28, 'bad-day'],
  ])('counts the days the clinic has chosen: of %i, after %i it is %s', (days, daysAgo, expected) => {
    expect(today(plan(daysAgo, { settings: { 'gap-days': days } }))).toEqual([expected]);
  });

  it('is as signed where nothing was ever done', () => {
    expect(today(plan(null))).toEqual(['as-planned']);
  });

  it('is as signed where the dose was written anew in the break, and not where it was only raised by itself', () => {
    expect(today(plan(42, { versions: signedDaysAgo(3) }))).toEqual(['as-planned']);
    expect(today(plan(42, { versions: signedDaysAgo(3, 'progress') }))).toEqual(['bad-day']);
  });

  it('counts a session of the person’s other record', () => {
    const other = { ...inputs(), lastSessionOn: addDays(day, -2) };
    expect(today(plan(42, { beside: [other] }))).toEqual(['as-planned']);
  });
});
