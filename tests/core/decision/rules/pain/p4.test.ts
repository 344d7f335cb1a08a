import { describeRule } from '../thresholds.ts';

describeRule('P4', {
  'pain of 5 during or after holds': {
    versions: [1, 2],
    cases: [
      [{ painDuring: 4, painAfter: 4 }, false],
      [{ painDuring: 5, usualPain: 4, usualPainTop: 5 }, false],
      [{ painDuring: 6, usualPain: 4, usualPainTop: 5, painCeiling: 6 }, true],
      [{ painDuring: 6 }, true],
      [{ painAfter: 5 }, true],
      [{ painDuring: 5 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
