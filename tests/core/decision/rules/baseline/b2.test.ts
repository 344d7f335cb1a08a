import { describeRule } from '../thresholds.ts';

describeRule('B2', {
  'an outgrown usual pain holds and asks for a look': {
    versions: [1, 2],
    cases: [
      [{ baselineLatched: false }, false],
      [{ baselineLatched: true }, true],
    ],
    answers: ['hold', null, 'as-planned', 'routine'],
  },
});
