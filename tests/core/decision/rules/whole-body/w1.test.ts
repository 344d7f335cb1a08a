import { describeRule } from '../thresholds.ts';

describeRule('W1', {
  'several joints in flare, or tiredness two over usual, holds': {
    versions: [1, 2],
    cases: [
      [{ otherJointsFlared: 1, flareDays: 0 }, false],
      [{ otherJointsFlared: 0, flareDays: 1 }, false],
      [{ otherJointsFlared: 1, flareDays: 1 }, true],
      [{ otherJointsFlared: 2, flareDays: 2 }, true],
      [{ fatigueRise: 1 }, false],
      [{ fatigueRise: null }, false],
      [{ fatigueRise: 3 }, true],
      [{ fatigueRise: 2 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
