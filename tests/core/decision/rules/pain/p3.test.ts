import { describeRule } from '../thresholds.ts';

describeRule('P3', {
  'pain of 5 before the session swaps the session and leaves the plan': {
    versions: [1, 2],
    cases: [
      [{ painBefore: 4, usualPain: 4, usualPainTop: 4 }, false],
      [{ painBefore: 4, usualPain: 3, usualPainTop: 3 }, false],
      [{ painBefore: 5, usualPain: 5, usualPainTop: 5 }, false],
      [{ painBefore: 5, usualPain: 3, usualPainTop: 5 }, false],
      [{ painBefore: 6, usualPain: 5, usualPainTop: 5, painCeiling: 6 }, true],
      [{ painBefore: 5, usualPain: 4, usualPainTop: 4 }, true],
    ],
    answers: ['hold', null, 'bad-day', 'none'],
  },
});
