import { describeRule, unknownUsual } from '../thresholds.ts';

describeRule('P7', {
  'a week of mornings two over usual eases back': {
    versions: [1, 2],
    cases: [
      [{ morningPainMean7: 2.99 }, false],
      [{ morningPainMean7: null }, false],
      [{ morningPainMean7: 3.01 }, true],
      [{ morningPainMean7: 3 }, true],
    ],
    answers: ['ease-back', null, 'as-planned', 'none'],
  },
  'usual pain not known yet is read as none': {
    versions: [1],
    cases: [
      [{ ...unknownUsual, morningPainMean7: 1.99 }, false],
      [{ ...unknownUsual, morningPainMean7: 2 }, true],
    ],
    answers: ['ease-back', null, 'as-planned', 'none'],
  },
  'says nothing while usual pain is not known': {
    versions: [2],
    cases: [
      [{ ...unknownUsual, morningPainMean7: 2 }, false],
      [{ ...unknownUsual, morningPainMean7: 4 }, false],
    ],
  },
});
