import { describeRule } from '../thresholds.ts';

describeRule('A1', {
  'two sessions missed with under 75 % done holds': {
    versions: [1, 2],
    cases: [
      [{ missedSessions14: 1, plannedSessions14: 2 }, false],
      [{ missedSessions14: 2, plannedSessions14: 8 }, false],
      [{ missedSessions14: 2, plannedSessions14: 9 }, false],
      [{ missedSessions14: 0, plannedSessions14: 0 }, false],
      [{ missedSessions14: 3, plannedSessions14: 8 }, true],
      [{ missedSessions14: 2, plannedSessions14: 7 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
