import { describeRule } from '../thresholds.ts';

describeRule('D1', {
  'extra pain relief holds': {
    versions: [1, 2],
    cases: [
      [{ extraPainRelief: false }, false],
      [{ extraPainRelief: true }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
