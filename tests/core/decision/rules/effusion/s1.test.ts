import { describeRule } from '../thresholds.ts';

describeRule('S1', {
  'effusion 3+ pauses, rests the joint and calls the same day': {
    versions: [1, 2],
    cases: [
      [{ effusion: '2+', effusionRun: 5 }, false],
      [{ effusion: '3+', effusionRun: 1 }, true],
    ],
    answers: ['pause', null, 'rest-this-joint', 'same-day'],
  },
});
