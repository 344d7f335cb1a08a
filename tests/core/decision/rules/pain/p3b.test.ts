import { describeRule, unknownUsual } from '../thresholds.ts';

describeRule('P3b', {
  'two points over usual before the session hold': {
    versions: [1, 2],
    cases: [
      [{ painBefore: 2 }, false],
      [{ painBefore: 3, usualPainTop: 2 }, false],
      [{ painBefore: 4 }, true],
      [{ painBefore: 3 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'usual pain not known yet is read as none': {
    versions: [1],
    cases: [
      [{ ...unknownUsual, painBefore: 1 }, false],
      [{ ...unknownUsual, painBefore: 2 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'says nothing while usual pain is not known': {
    versions: [2],
    cases: [
      [{ ...unknownUsual, painBefore: 2 }, false],
      [{ ...unknownUsual, painBefore: 4 }, false],
    ],
  },
});
