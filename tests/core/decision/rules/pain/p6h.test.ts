import { describeRule, unknownUsual } from '../thresholds.ts';

describeRule('P6h', {
  'two hours after one over usual holds': {
    versions: [1, 2],
    cases: [
      [{ painTwoHours: 1 }, false],
      [{ painTwoHours: 3 }, true],
      [{ painTwoHours: 2 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'usual pain not known yet is read as none': {
    versions: [1],
    cases: [
      [{ ...unknownUsual, painTwoHours: 0 }, false],
      [{ ...unknownUsual, painTwoHours: 1 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'says nothing while usual pain is not known': {
    versions: [2],
    cases: [
      [{ ...unknownUsual, painTwoHours: 1 }, false],
      [{ ...unknownUsual, painTwoHours: 4 }, false],
    ],
  },
});
