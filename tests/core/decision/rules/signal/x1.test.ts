import { describeRule } from '../thresholds.ts';

describeRule('X1', {
  'a slow rise of mornings holds and nothing more': {
    versions: [1, 2],
    cases: [
      [{ symptomSignal: false }, false],
      [{ symptomSignal: true }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
