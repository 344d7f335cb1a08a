import { describeRule, unknownUsual } from '../thresholds.ts';

describeRule('P5', {
  'the next morning three over usual, or two over it twice, eases back': {
    versions: [2],
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
    answers: ['ease-back', null, 'as-planned', 'none'],
  },
  'the next morning two over usual, or one over it on two mornings running, eases back': {
    versions: [1],
    cases: [
      [{ painNextMorning: 2 }, false],
      [{ painNextMorning: 1, previousMorningOverTop: true }, false],
      [{ painNextMorning: 3, usualPainTop: 2 }, false],
      [{ painNextMorning: null, painLaterMorning: 4 }, false],
      [{ painNextMorning: 2, twoOverBefore: true }, false],
      [{ painNextMorning: 2, previousMorningOverTop: true }, true],
      [{ painNextMorning: 3, previousMorningOverTop: true }, true],
      [{ painNextMorning: 4 }, true],
      [{ painNextMorning: 3 }, true],
    ],
    answers: ['ease-back', null, 'as-planned', 'none'],
  },
  'usual pain not known yet is read as none': {
    versions: [1],
    cases: [
      [{ ...unknownUsual, painNextMorning: 1 }, false],
      [{ ...unknownUsual, painNextMorning: 2 }, true],
    ],
    answers: ['ease-back', null, 'as-planned', 'none'],
  },
  'says nothing while usual pain is not known': {
    versions: [2],
    cases: [
      [{ ...unknownUsual, painNextMorning: 2 }, false],
      [{ ...unknownUsual, painNextMorning: 4 }, false],
    ],
  },
});
