import { describeRule } from '../thresholds.ts';

describeRule('D3', {
  'more done than prescribed holds and asks for a look': {
    versions: [1, 2],
    cases: [
      [{ overdone: false }, false],
      [{ overdone: true }, true],
    ],
    answers: ['hold', null, 'as-planned', 'routine'],
  },
});
