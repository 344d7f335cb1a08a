import { describeRule } from '../thresholds.ts';

describeRule('C4', {
  'no session on target holds; two in a row say nothing': {
    versions: [1, 2],
    cases: [
      [{ sessionsOnTarget: 2 }, false],
      [{ sessionsOnTarget: 3 }, false],
      [{ sessionsOnTarget: 0 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
  'one session on target allows repetitions and no more': {
    versions: [1, 2],
    cases: [[{ sessionsOnTarget: 1 }, true]],
    answers: ['progress', 'repetitions', 'as-planned', 'none'],
  },
});
