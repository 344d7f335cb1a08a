import { describeRule } from '../thresholds.ts';

describeRule('S2', {
  'effusion 2+ twice running pauses, rests the joint and calls the same day': {
    versions: [1, 2],
    cases: [
      [{ effusion: '2+', effusionRun: 1 }, false],
      [{ effusion: '1+', effusionRun: 2 }, false],
      [{ effusion: '2+', effusionRun: 3 }, true],
      [{ effusion: '2+', effusionRun: 2 }, true],
    ],
    answers: ['pause', null, 'rest-this-joint', 'same-day'],
  },
});
