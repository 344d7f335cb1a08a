import { describeRule, unknownUsual } from '../thresholds.ts';

describeRule('P5h', {
  'the next morning one over usual holds': {
    versions: [2],
    cases: [
      [{ painNextMorning: 1 }, false],
      [{ painNextMorning: null, painLaterMorning: 2 }, true],
      [{ painNextMorning: 3 }, true],
      [{ painNextMorning: 2 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'the next morning one over usual holds, and no later one speaks for it': {
    versions: [1],
    cases: [
      [{ painNextMorning: 1 }, false],
      [{ painNextMorning: null, painLaterMorning: 2 }, false],
      [{ painNextMorning: 3 }, true],
      [{ painNextMorning: 2 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'usual pain not known yet is read as none': {
    versions: [1],
    cases: [
      [{ ...unknownUsual, painNextMorning: 0 }, false],
      [{ ...unknownUsual, painNextMorning: 1 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'says nothing while usual pain is not known': {
    versions: [2],
    cases: [
      [{ ...unknownUsual, painNextMorning: 1 }, false],
      [{ ...unknownUsual, painNextMorning: 4 }, false],
    ],
  },
});
