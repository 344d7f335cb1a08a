import { describeRule } from '../thresholds.ts';

describeRule('D4', {
  'a joint that gave way holds and asks for a look': {
    versions: [1, 2],
    cases: [
      [{ gaveWay: false }, false],
      [{ gaveWay: true }, true],
    ],
    answers: ['hold', null, 'as-planned', 'routine'],
  },
});
