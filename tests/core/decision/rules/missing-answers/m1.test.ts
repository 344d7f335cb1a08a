import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import type { EngineVersion } from '#core/decision/settings.ts';
import { facts } from '../../base-facts.ts';
import { describeRule } from '../thresholds.ts';

describeRule('M1', {
  'a missing required answer holds; not-applicable is not missing': {
    versions: [1, 2],
    cases: [
      [
        { painTwoHours: 'not-applicable', swelling: 'not-applicable', stiffnessMinutes: 'not-applicable' },
        false,
      ],
      [{ effusion: 'not-applicable', morningPainMean7: null, fatigueRise: null }, false],
      [{ painBefore: null }, true],
      [{ painDuring: null }, true],
      [{ painAfter: null }, true],
      [{ painTwoHours: null }, true],
      [{ painNextMorning: null }, true],
      [{ swelling: null }, true],
      [{ stiffnessMinutes: null }, true],
      [{ repetitionsDonePercent: null }, true],
      [{ redFlags: null }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'a later morning that speaks stands in for the next one': {
    versions: [2],
    cases: [
      [{ painNextMorning: null, painLaterMorning: 'not-applicable' }, true],
      [{ painNextMorning: null, painLaterMorning: 1 }, false],
      [{ painNextMorning: null, painLaterMorning: null }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'no later morning stands in for the next one': {
    versions: [1],
    cases: [[{ painNextMorning: null, painLaterMorning: 1 }, true]],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});

describe('a missing answer', () => {
  const found = (changed: Partial<Facts>, version: EngineVersion) =>
    decide(facts(changed), { 'engine-version': version }).reasons.find(({ rule }) => rule === 'M1')?.observed;

  it.each([1, 2] as const)('is named, and no other with it (version %i)', (version) => {
    expect(found({ painBefore: null }, version)).toEqual({ missing: ['painBefore'] });
    expect(found({ painNextMorning: null, swelling: null }, version)).toEqual({
      missing: ['painNextMorning', 'swelling'],
    });
  });

  it('is not the next morning where a later one speaks for it, since version 2', () => {
    const spokenFor = { painNextMorning: null, painLaterMorning: 1, swelling: null } as const;
    expect(found(spokenFor, 2)).toEqual({ missing: ['swelling'] });
    expect(found(spokenFor, 1)).toEqual({ missing: ['painNextMorning', 'swelling'] });
  });
});
