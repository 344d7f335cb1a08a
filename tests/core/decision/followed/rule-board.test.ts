/** The figures of a hand-made history whose answers are known, and the intervals beside them. */
import { describe, expect, it } from 'vitest';
import type { DecisionWord } from '#core/decision/answers.ts';
import { type FollowedDecision, ruleBoard } from '#core/decision/followed/rule-board.ts';
import type { Following } from '#core/decision/followed/what-followed.ts';
import { wilsonInterval } from '#core/statistics/wilson.ts';

type Rules = Readonly<Record<string, DecisionWord>>;

const made = (
  patientId: string,
  decision: DecisionWord,
  rules: Rules,
  followed: Following | null,
  instead: DecisionWord | null = null,
  answered = false,
): FollowedDecision => ({
  patientId,
  decision,
  reasons: Object.entries(rules).map(([rule, word]) => ({ rule, effect: { decision: word } })),
  answered: instead !== null || answered,
  instead,
  followed,
});

const both: Rules = { P2: 'ease-back', P4: 'hold' };
const history = [
  made('a', 'ease-back', both, 'flare'),
  made('b', 'ease-back', both, 'over-limit', 'hold'),
  made('c', 'ease-back', both, 'nothing', 'pause'),
  made('d', 'hold', { P4: 'hold' }, 'no-answer', 'hold'),
  made('e', 'ease-back', both, null),
  made('f', 'ease-back', both, 'nothing', 'progress'),
  made('a', 'pause', { R1: 'pause', P2: 'ease-back' }, 'nothing', null, true),
];
const rowOf = (rule: string, all = history) => ruleBoard([rule], all)[0]!.figures;

describe('a rule in one clinic', () => {
  it('fired, decided, was overruled and in which direction, and what followed, as counted by hand', () => {
    expect(rowOf('P2')).toMatchObject({
      fired: 6,
      decided: 5,
      // Three overruled, one accepted; two nobody answered.
      answered: 4,
      overruled: { bolder: 2, moreCautious: 1, same: 0 },
      tooEarly: 1,
      followed: {
        flare: { count: 1 },
        'over-limit': { count: 1 },
        nothing: { count: 3 },
        'no-answer': { count: 0 },
      },
    });
    expect(rowOf('P4')).toMatchObject({ fired: 6, decided: 1, overruled: { same: 1 } });
  });

  it.each([
    [4, true],
    [5, false],
    [6, false],
  ])('of %i people its figures are left out: %s', (people, isLeftOut) => {
    const all = Array.from({ length: people }, (_, place) =>
      made(`p${place}`, 'hold', { C2: 'hold' }, 'nothing'),
    );
    expect(rowOf('C2', [...all, ...all]) === null).toBe(isLeftOut);
  });

  it('that never fired stands with noughts, since they speak of nobody', () => {
    expect(rowOf('X1')).toMatchObject({ fired: 0, decided: 0, tooEarly: 0 });
    expect(rowOf('X1')!.followed.flare).toEqual({ count: 0, interval: null });
  });
});

// Figures from memory of the published score interval: 5 of 10 and 0 of 10.
it.each([
  [5, 10, 0.2366, 0.7634],
  [0, 10, 0, 0.2775],
  [10, 10, 0.7225, 1],
])('the interval of %i of %i is %f to %f', (count, of, low, high) => {
  const interval = wilsonInterval(count, of)!;
  expect(interval.low).toBeCloseTo(low, 4);
  expect(interval.high).toBeCloseTo(high, 4);
});

it('nothing counted has no interval', () => {
  expect(wilsonInterval(0, 0)).toBeNull();
});
