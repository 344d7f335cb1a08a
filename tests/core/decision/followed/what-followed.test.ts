/** What a patient told in the seven days after a decision, each edge of it. */
import { describe, expect, it } from 'vitest';
import { whatFollowed } from '#core/decision/followed/what-followed.ts';
import type { MorningRecord, SessionRecord } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';

const day = '2026-03-10';
const today = '2026-04-10';
const on = (days: number) => addDays(day, days);

const morning = (days: number, pain: number | null, flare: boolean | null = false, clockDoubtful = false) =>
  ({
    day: on(days),
    clockDoubtful,
    joints: [{ joint: 'right-knee', pain, flare }],
  }) as unknown as MorningRecord;

const session = (days: number, painDuring: number | null) =>
  ({
    day: on(days),
    clockDoubtful: false,
    joints: [
      { joint: 'right-knee', painBefore: 1, painDuring, painAfter: 1, painTwoHours: 'not-applicable' },
    ],
  }) as unknown as SessionRecord;

const followed = (mornings: readonly MorningRecord[], sessions: readonly SessionRecord[] = [], now = today) =>
  whatFollowed({ mornings, sessions }, 'right-knee', day, 5, now);

describe('within seven days after a decision', () => {
  it.each([
    [0, 'no-answer'],
    [1, 'flare'],
    [7, 'flare'],
    [8, 'no-answer'],
  ])('a flare told on day %i is %s', (days, said) => {
    expect(followed([morning(days, null, true)])).toBe(said);
  });

  it('a flare that ran already did not follow; one that began again did', () => {
    expect(followed([morning(0, 2, true), morning(1, 2, true), morning(2, 2, false)])).toBe('nothing');
    expect(followed([morning(-2, 2, true), morning(1, 2, true)])).toBe('nothing');
    expect(followed([morning(-3, 2, true), morning(1, 2, true)])).toBe('flare');
    expect(followed([morning(0, 2, true), morning(1, 2, false), morning(2, 2, true)])).toBe('flare');
  });

  it.each([
    [5, 'nothing'],
    [6, 'over-limit'],
  ])('pain of %i with a limit of 5 is %s, in the morning or in a session', (pain, said) => {
    expect(followed([morning(3, pain)])).toBe(said);
    expect(followed([], [session(3, pain)])).toBe(said);
  });

  it('a flare comes before pain over the limit', () => {
    expect(followed([morning(2, 9), morning(3, 1, true)])).toBe('flare');
  });

  it('what was left open, of another joint or by a doubtful clock is no answer', () => {
    expect(followed([morning(2, null, null)])).toBe('no-answer');
    expect(followed([morning(2, 9, true, true)])).toBe('no-answer');
    const other = { ...morning(2, 9), joints: [{ joint: 'left-knee', pain: 9, flare: true }] };
    expect(followed([other as unknown as MorningRecord])).toBe('no-answer');
  });

  it('is not said before the seven days are over', () => {
    expect(followed([morning(1, 9)], [], on(7))).toBeNull();
    expect(followed([morning(1, 9)], [], on(8))).toBe('over-limit');
  });
});
