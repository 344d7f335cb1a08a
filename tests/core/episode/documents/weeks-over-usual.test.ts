/** A joint over its usual pain for weeks: counted from mornings that were answered, and from nothing else. */
import { describe, expect, it } from 'vitest';
import { weeksOverUsual } from '#core/episode/documents/weeks-over-usual.ts';
import { addDays } from '#core/time/day.ts';

const today = '2026-04-20';
/** Pain by days ago. */
const mornings = (pains: Readonly<Record<number, number>>) =>
  Object.entries(pains).map(([ago, pain]) => ({ day: addDays(today, -Number(ago)), pain }));

describe('weeks over usual pain', () => {
  it('are none under 5 mornings of 14 days, and are from 5 on', () => {
    expect(weeksOverUsual(mornings({ 0: 4, 1: 4, 8: 4, 9: 4 }), 3, today)).toBeNull();
    expect(weeksOverUsual(mornings({ 0: 4, 1: 4, 2: 3, 8: 4, 9: 4, 13: 4 }), 3, today)).toEqual({
      over: 5,
      answered: 6,
      top: 3,
    });
    expect(weeksOverUsual(mornings({ 0: 4, 1: 4, 2: 4, 8: 4, 9: 4, 10: 4 }), 3, today)?.over).toBe(6);
  });

  it('need 2 mornings in each of the two weeks', () => {
    expect(weeksOverUsual(mornings({ 0: 4, 1: 4, 2: 4, 3: 4, 4: 4, 7: 4 }), 3, today)).toBeNull();
    expect(weeksOverUsual(mornings({ 6: 4, 7: 4, 8: 4, 9: 4, 10: 4 }), 3, today)).toBeNull();
    expect(weeksOverUsual(mornings({ 5: 4, 6: 4, 7: 4, 8: 4, 9: 4 }), 3, today)).not.toBeNull();
  });

  it('count a pain over the usual, not at it, and no day further back than two weeks', () => {
    expect(weeksOverUsual(mornings({ 0: 3, 1: 3, 2: 3, 8: 3, 9: 3 }), 3, today)).toBeNull();
    expect(weeksOverUsual(mornings({ 0: 4, 1: 4, 2: 4, 8: 4, 14: 4 }), 3, today)).toBeNull();
  });

  it('are not known where no usual pain is set', () => {
    expect(weeksOverUsual(mornings({ 0: 9, 1: 9, 2: 9, 8: 9, 9: 9 }), null, today)).toBeNull();
  });
});
