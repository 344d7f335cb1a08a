import { describeRule } from '../thresholds.ts';

describeRule('C3', {
  'two repetitions nearer to failure than prescribed holds, where a reserve was prescribed': {
    versions: [1, 2],
    cases: [
      [{ reserveShortfall: 1 }, false],
      [{ reserveShortfall: 2, prescribedReserve: 0 }, false],
      [{ reserveShortfall: 3 }, true],
      [{ reserveShortfall: 2, prescribedReserve: 1 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
