/**
 * For every rule: under, at and over its threshold, and what it leaves of each answer when it is the
 * most cautious rule that fires. Figures typed from the published table of rules, version 2.
 */
import type { Facts } from '#core/decision/facts/facts.ts';

export interface Trio {
  readonly rule: string;
  readonly guarantee: string;
  /** [facts, does the rule fire] */
  readonly cases: readonly (readonly [Partial<Facts>, boolean])[];
  /** The answers at the last case: decision, today, contact. */
  readonly answers: readonly [string, string, string];
}

const high = { usualPain: 5, usualPainTop: 5, painCeiling: 7 } as const;
const calm = {
  painBefore: 4,
  painDuring: 4,
  painAfter: 4,
  painTwoHours: 4,
  painNextMorning: 4,
  morningPainMean7: 5,
} as const;

export const trios: readonly Trio[] = [
  {
    rule: 'R1',
    guarantee: 'any red flag pauses, stops today and calls by its class',
    cases: [
      [{ redFlags: [] }, false],
      [{ redFlags: null }, false],
      [{ redFlags: ['locked-joint'] }, true],
      [{ redFlags: ['locked-joint', 'dark-urine'] }, true],
      [{ redFlags: ['dark-urine', 'chest-pain'] }, true],
    ],
    answers: ['pause', 'none', 'emergency'],
  },
  {
    rule: 'P1',
    guarantee:
      'pain of 8 eases back and asks for the easier session, and for a call the same day 2 over usual',
    cases: [
      [{ ...high, ...calm, painDuring: 7 }, false],
      [{ ...high, ...calm, painDuring: 9, usualPain: 7, usualPainTop: 7 }, true],
      [{ ...high, ...calm, painBefore: 8 }, true],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 8 }, true],
    ],
    answers: ['ease-back', 'bad-day', 'same-day'],
  },
  {
    rule: 'P1x',
    guarantee: 'pain of 10, or severe pain far over usual or repeated, pauses',
    cases: [
      [{ ...high, ...calm, usualPain: 8, usualPainTop: 8, painDuring: 9 }, false],
      [{ ...high, ...calm, usualPain: 8, usualPainTop: 8, painDuring: 10 }, true],
      [{ ...high, ...calm, usualPain: 7, usualPainTop: 7, painDuring: 9 }, false],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 9 }, true],
      [{ ...high, ...calm, usualPain: 7, usualPainTop: 7, painNextMorning: 8 }, false],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painNextMorning: 7 }, false],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painNextMorning: 8 }, true],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 8 }, false],
      [{ ...high, ...calm, usualPain: 7, usualPainTop: 7, painDuring: 8, previousPeakEight: true }, false],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 7, previousPeakEight: true }, false],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 8, previousPeakEight: true }, true],
    ],
    answers: ['pause', 'none', 'same-day'],
  },
  {
    rule: 'P2',
    guarantee: 'pain over the personal ceiling eases back and asks for the easier session',
    cases: [
      [{ painDuring: 5 }, false],
      [{ painDuring: 6, painCeiling: 6 }, false],
      [{ painDuring: 7, painCeiling: 7 }, false],
      [{ painDuring: 7, painCeiling: 6 }, true],
      [{ painDuring: 6 }, true],
    ],
    answers: ['ease-back', 'bad-day', 'none'],
  },
  {
    rule: 'P3',
    guarantee: 'pain of 5 before the session swaps the session and leaves the plan',
    cases: [
      [{ painBefore: 4, usualPain: 4, usualPainTop: 4 }, false],
      [{ painBefore: 5, usualPain: 5, usualPainTop: 5 }, false],
      [{ painBefore: 5, usualPain: 3, usualPainTop: 5 }, false],
      [{ painBefore: 6, usualPain: 5, usualPainTop: 5, painCeiling: 6 }, true],
      [{ painBefore: 5, usualPain: 4, usualPainTop: 4 }, true],
    ],
    answers: ['hold', 'bad-day', 'none'],
  },
  {
    rule: 'P3b',
    guarantee: 'two points over usual before the session hold',
    cases: [
      [{ painBefore: 2 }, false],
      [{ painBefore: 3, usualPainTop: 2 }, false],
      [{ painBefore: 4 }, true],
      [{ painBefore: 3 }, true],
    ],
    answers: ['hold', 'as-planned', 'none'],
  },
  {
    rule: 'P4',
    guarantee: 'pain of 5 during or after holds',
    cases: [
      [{ painDuring: 4, painAfter: 4 }, false],
      [{ painDuring: 5, usualPain: 4, usualPainTop: 5 }, false],
      [{ painAfter: 5 }, true],
      [{ painDuring: 5 }, true],
    ],
    answers: ['hold', 'as-planned', 'none'],
  },
  {
    rule: 'P5',
    guarantee: 'the next morning three over usual, or two over it twice, eases back',
    cases: [
      [{ painNextMorning: 3 }, false],
      [{ painNextMorning: 2, twoOverBefore: true }, false],
      [{ painNextMorning: 4, usualPainTop: 2 }, false],
      [{ painNextMorning: 2, previousMorningOverTop: true }, false],
      [{ painNextMorning: null, painLaterMorning: 3 }, false],
      [{ painNextMorning: 3, twoOverBefore: true }, true],
      [{ painNextMorning: null, painLaterMorning: 4 }, true],
      [{ painNextMorning: 5 }, true],
      [{ painNextMorning: 4 }, true],
    ],
    answers: ['ease-back', 'as-planned', 'none'],
  },
  {
    rule: 'P5h',
    guarantee: 'the next morning one over usual holds',
    cases: [
      [{ painNextMorning: 1 }, false],
      [{ painNextMorning: null, painLaterMorning: 2 }, true],
      [{ painNextMorning: 3 }, true],
      [{ painNextMorning: 2 }, true],
    ],
    answers: ['hold', 'as-planned', 'none'],
  },
  {
    rule: 'P5r',
    guarantee: 'five answered mornings in a row over usual hold and ask for a look',
    cases: [
      [{ morningsOverTop: 4 }, false],
      [{ morningsOverTop: 6, usualPain: null, usualPainTop: null }, false],
      [{ morningsOverTop: 6 }, true],
      [{ morningsOverTop: 5 }, true],
    ],
    answers: ['hold', 'as-planned', 'routine'],
  },
  {
    rule: 'P6',
    guarantee: 'two hours after two over usual eases back',
    cases: [
      [{ painTwoHours: 'not-applicable' }, false],
      [{ painTwoHours: 2 }, false],
      [{ painTwoHours: 4 }, true],
      [{ painTwoHours: 3 }, true],
    ],
    answers: ['ease-back', 'as-planned', 'none'],
  },
  {
    rule: 'P6h',
    guarantee: 'two hours after one over usual holds',
    cases: [
      [{ painTwoHours: 1 }, false],
      [{ painTwoHours: 3 }, true],
      [{ painTwoHours: 2 }, true],
    ],
    answers: ['hold', 'as-planned', 'none'],
  },
  {
    rule: 'P7',
    guarantee: 'a week of mornings two over usual eases back',
    cases: [
      [{ morningPainMean7: 2.99 }, false],
      [{ morningPainMean7: null }, false],
      [{ morningPainMean7: 3.01 }, true],
      [{ morningPainMean7: 3 }, true],
    ],
    answers: ['ease-back', 'as-planned', 'none'],
  },
  {
    rule: 'P7h',
    guarantee: 'a week of mornings one over usual holds',
    cases: [
      [{ morningPainMean7: 1.99 }, false],
      [{ morningPainMean7: 2.01 }, true],
      [{ morningPainMean7: 2 }, true],
    ],
    answers: ['hold', 'as-planned', 'none'],
  },
  {
    rule: 'B0',
    guarantee: 'without a usual pain the dose is held',
    cases: [
      [
        {
          usualPain: 0,
          usualPainTop: 0,
          painBefore: 0,
          painTwoHours: 0,
          painNextMorning: 0,
          morningPainMean7: 0,
        },
        false,
      ],
      [
        {
          usualPain: null,
          usualPainTop: null,
          painBefore: 0,
          painTwoHours: 0,
          painNextMorning: 0,
          morningPainMean7: 0,
        },
        true,
      ],
    ],
    answers: ['hold', 'as-planned', 'none'],
  },
  {
    rule: 'B0r',
    guarantee: 'a usual pain that was told allows repetitions and no more',
    cases: [
      [{ usualPainProvisional: false }, false],
      [{ usualPainProvisional: true }, true],
    ],
    answers: ['progress', 'as-planned', 'none'],
  },
  {
    rule: 'B1',
    guarantee: 'usual values over 42 days old hold and ask for a look',
    cases: [
      [{ baselineAgeDays: 41 }, false],
      [{ baselineAgeDays: 42 }, false],
      [{ baselineAgeDays: 43 }, true],
    ],
    answers: ['hold', 'as-planned', 'routine'],
  },
  {
    rule: 'B2',
    guarantee: 'an outgrown usual pain holds and asks for a look',
    cases: [
      [{ baselineLatched: false }, false],
      [{ baselineLatched: true }, true],
    ],
    answers: ['hold', 'as-planned', 'routine'],
  },
  {
    rule: 'B3',
    guarantee: 'usual pain two over the first of the plan holds and asks for a look',
    cases: [
      [{ usualPainRise: 1 }, false],
      [{ usualPainRise: null }, false],
      [{ usualPainRise: 3 }, true],
      [{ usualPainRise: 2 }, true],
    ],
    answers: ['hold', 'as-planned', 'routine'],
  },
  {
    rule: 'W3',
    guarantee: 'severe swelling pauses, rests the joint and calls the same day',
    cases: [
      [{ swelling: 'clear' }, false],
      [{ swelling: 'severe' }, true],
    ],
    answers: ['pause', 'rest-this-joint', 'same-day'],
  },
  {
    rule: 'W2',
    guarantee: 'clear swelling eases back and rests the joint',
    cases: [
      [{ swelling: 'slight' }, false],
      [{ swelling: 'clear', usualSwelling: 'slight' }, true],
      [{ swelling: 'clear' }, true],
    ],
    answers: ['ease-back', 'rest-this-joint', 'routine'],
  },
  {
    rule: 'W1s',
    guarantee: 'slight swelling holds where none is usual',
    cases: [
      [{ swelling: 'none' }, false],
      [{ swelling: 'slight', usualSwelling: 'slight' }, false],
      [{ swelling: 'not-applicable' }, false],
      [{ swelling: 'slight' }, true],
    ],
    answers: ['hold', 'as-planned', 'none'],
  },
];
