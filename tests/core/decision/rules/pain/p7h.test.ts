import { describeRule, unknownUsual } from '../thresholds.ts';

describeRule('P7h', {
  'a week of mornings one over usual holds': {
    versions: [1, 2],
    cases: [
      [{ morningPainMean7: 1.99 }, false],
      [{ morningPainMean7: 2.01 }, true],
      [{ morningPainMean7: 2 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'usual pain not known yet is read as none': {
    versions: [1],
    cases: [
      [{ ...unknownUsual, morningPainMean7: 0.99 }, false],
      [{ ...unknownUsual, morningPainMean7: 1 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'says nothing while usual pain is not known': {
    versions: [2],
    cases: [
      [{ ...unknownUsual, morningPainMean7: 1 }, false],
      [{ ...unknownUsual, morningPainMean7: 4 }, false],
    ],
  },
});
