import { describeRule } from '../thresholds.ts';

describeRule('M1r', {
  'a later morning that speaks for the next one allows repetitions and no more': {
    versions: [2],
    cases: [
      [{ painNextMorning: null, painLaterMorning: null }, false],
      [{ painNextMorning: null, painLaterMorning: 'not-applicable' }, false],
      [{ painNextMorning: 1, painLaterMorning: 1 }, false],
      [{ painNextMorning: null, painLaterMorning: 1 }, true],
    ],
    answers: ['progress', 'repetitions', 'as-planned', 'none'],
  },
});
