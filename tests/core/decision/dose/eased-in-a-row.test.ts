/** Ease-backs in a row, which put a patient on the worklist. */
import { describe, expect, it } from 'vitest';
import type { DecisionWord } from '#core/decision/answers.ts';
import { easedInARow } from '#core/decision/dose/eased-in-a-row.ts';
import { dayNumber } from '#core/time/day.ts';
import { daysAgo, today } from '../propose.ts';
import { knee, morning, record, shoulder } from '../small-record.ts';

/** Words of the days given as days back, the newest first; the knee flared on the other days named. */
const inARow = (
  words: readonly (readonly [number, DecisionWord])[],
  flared: readonly number[] = [],
  settings = {},
  joint = knee,
) => {
  const mornings = record().mornings.map((one) =>
    morning(one.day, { flare: flared.includes(dayNumber(today) - dayNumber(one.day)) }),
  );
  const earlier = words.map(([back, decision]) => ({
    sessionId: `session ${back}`,
    decision,
    madeAt: daysAgo(back),
  }));
  return easedInARow(earlier, {
    record: record({ mornings }),
    joints: [joint],
    judgedSessionId: 'session 0',
    settings,
  });
};

describe('ease-backs in a row', () => {
  it('are those since the last other word', () => {
    expect(inARow([])).toBe(0);
    expect(
      inARow([
        [2, 'hold'],
        [4, 'ease-back'],
      ]),
    ).toBe(0);
    expect(
      inARow([
        [2, 'ease-back'],
        [4, 'ease-back'],
        [6, 'pause'],
        [8, 'ease-back'],
      ]),
    ).toBe(2);
  });

  it('count a session once, by the last word on it, and the one now judged not at all', () => {
    expect(
      inARow([
        [0, 'ease-back'],
        [2, 'ease-back'],
        [2, 'hold'],
        [4, 'ease-back'],
      ]),
    ).toBe(2);
    expect(
      inARow([
        [2, 'hold'],
        [2, 'ease-back'],
        [4, 'ease-back'],
      ]),
    ).toBe(0);
  });

  const three = [
    [2, 'ease-back'],
    [5, 'ease-back'],
    [9, 'ease-back'],
  ] as const;

  it('do not count where one was made in a flare reported for the joint', () => {
    expect(inARow(three)).toBe(3);
    expect(inARow(three, [5])).toBe(2);
    expect(inARow(three, [6, 5, 4])).toBe(2);
    expect(inARow(three, [6, 4])).toBe(3);
    expect(inARow(three, [5], {}, shoulder)).toBe(3);
  });

  it('count in a flare too in version 1', () => {
    expect(inARow(three, [5], { 'engine-version': 1 })).toBe(3);
  });
});
