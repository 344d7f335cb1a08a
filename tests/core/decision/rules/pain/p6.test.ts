import { describeRule, unknownUsual } from '../thresholds.ts';

describeRule('P6', {
  'two hours after two over usual eases back': {
    versions: [1, 2],
    cases: [
      [{ painTwoHours: 'not-applicable' }, false],
      [{ painTwoHours: 2 }, false],
      [{ painTwoHours: 4 }, true],
      [{ painTwoHours: 3 }, true],
    ],
    answers: ['ease-back', null, 'as-planned', 'none'],
  },
  'usual pain not known yet is read as none': {
    versions: [1],
    cases: [
      [{ ...unknownUsual, painTwoHours: 1 }, false],
      [{ ...unknownUsual, painTwoHours: 2 }, true],
    ],
    answers: ['ease-back', null, 'as-planned', 'none'],
  },
  'says nothing while usual pain is not known': {
    versions: [2],
    cases: [
      [{ ...unknownUsual, painTwoHours: 2 }, false],
      [{ ...unknownUsual, painTwoHours: 4 }, false],
    ],
  },
});
