/**
 * The check rows printed with version 2 of the table of rules, typed again: base case of the calculation with
 * usual pain 1, and what each change of it gives.
 */
import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import { decidedAgain, replay } from '#core/decision/replay.ts';
import { facts } from '../base-facts.ts';

type Answer = readonly [decision: string, largestStep: string | null, today: string, contact: string];
const answersAfter = (changed: Partial<Facts>, version?: 1 | 2): Answer => {
  const settings = version === undefined ? undefined : { 'engine-version': version };
  const { decision, largestStep, today, contact } = decide(facts(changed), settings);
  return [decision, largestStep, today, contact];
};
const hold: Answer = ['hold', null, 'as-planned', 'none'];
const easeBack: Answer = ['ease-back', null, 'as-planned', 'none'];

const allPain = (score: number): Partial<Facts> => ({
  painBefore: score,
  painDuring: score,
  painAfter: score,
  painTwoHours: score,
  painNextMorning: score,
});

const checks: readonly (readonly [number, string, Partial<Facts>, Answer])[] = [
  [1, 'base case', {}, ['progress', 'load', 'as-planned', 'none']],
  [2, 'next morning 2', { painNextMorning: 2 }, hold],
  [3, 'next morning 3', { painNextMorning: 3 }, hold],
  [3, 'next morning 3 again', { painNextMorning: 3, twoOverBefore: true }, easeBack],
  [4, 'next morning 4', { painNextMorning: 4 }, easeBack],
  [5, 'next morning 2 after one over', { painNextMorning: 2, previousMorningOverTop: true }, hold],
  [
    6,
    'later morning 1',
    { painNextMorning: null, painLaterMorning: 1 },
    ['progress', 'repetitions', 'as-planned', 'none'],
  ],
  [6, 'later morning 4', { painNextMorning: null, painLaterMorning: 4 }, easeBack],
  [6, 'no later morning', { painNextMorning: null, painLaterMorning: null }, hold],
  [7, 'usual null, all 4', { ...allPain(4), morningPainMean7: 4, usualPain: null, usualPainTop: null }, hold],
  [
    8,
    'usual null, during 6',
    { painDuring: 6, usualPain: null, usualPainTop: null },
    ['ease-back', null, 'bad-day', 'none'],
  ],
  [9, 'usual told', { usualPainProvisional: true }, ['progress', 'repetitions', 'as-planned', 'none']],
  [
    10,
    'usual 7, ceiling 7, during 8',
    {
      ...allPain(7),
      morningPainMean7: 7,
      painDuring: 8,
      usualPain: 7,
      usualPainTop: 7,
      painCeiling: 7,
    },
    ['ease-back', null, 'bad-day', 'routine'],
  ],
  [
    11,
    'usual 3, during 8',
    { painDuring: 8, usualPain: 3, usualPainTop: 3 },
    ['ease-back', null, 'bad-day', 'same-day'],
  ],
  [12, 'flare of 8 days', { flareDays: 8 }, ['ease-back', null, 'bad-day', 'routine']],
  [13, 'usual pain risen by 2', { usualPainRise: 2 }, ['hold', null, 'as-planned', 'routine']],
  [13, 'five mornings over usual', { morningsOverTop: 5 }, ['hold', null, 'as-planned', 'routine']],
];

describe('the 13 check rows of version 2', () => {
  for (const [row, name, changed, answer] of checks) {
    it(`${row}: ${name}`, () => {
      expect(answersAfter(changed)).toEqual(answer);
      expect(answersAfter(changed, 2)).toEqual(answer);
    });
  }

  it('version 1 decides the rows marked as changed as it always did', () => {
    const was = (row: number) => answersAfter(checks.findLast(([number]) => number === row)![2], 1);
    expect(was(5)).toEqual(easeBack);
    expect(was(7)[0]).toBe('ease-back');
    expect(was(10)).toEqual(['ease-back', null, 'bad-day', 'same-day']);
    expect(was(12)).toEqual(['pause', null, 'rest-this-joint', 'routine']);
  });
});

describe('a decision keeps the version it was made with', () => {
  const stored = (engineVersion: string) => ({
    id: engineVersion,
    facts: facts({ flareDays: 8 }),
    settings: { 'severe-pain': 8 },
    engineVersion,
    answers: decide(facts({ flareDays: 8 }), { 'engine-version': 1 }),
  });

  it('one of version 1, stored without a version among its choices, replays as version 1', () => {
    expect(decidedAgain(stored('1'))).toEqual({ outcome: 'same' });
    expect(decidedAgain(stored('2'))).toMatchObject({
      outcome: 'different',
      after: { decision: 'ease-back' },
    });
  });

  it('one stored before the new facts existed decides as with none of them', () => {
    const { painLaterMorning, twoOverBefore, morningsOverTop, usualPainProvisional, usualPainRise, ...old } =
      facts({});
    for (const version of ['1', '2']) {
      expect(replay({ facts: old, settings: {}, engineVersion: version })?.decision).toBe('progress');
    }
    expect([painLaterMorning, twoOverBefore, morningsOverTop]).toEqual(['not-applicable', false, 0]);
    expect([usualPainProvisional, usualPainRise]).toEqual([false, 0]);
  });

  it('one of a version this release does not know is not taken again', () => {
    expect(replay({ ...stored('3') })).toBeNull();
  });
});
