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
