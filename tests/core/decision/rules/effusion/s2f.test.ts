import { describeRule } from '../thresholds.ts';

describeRule('S2f', {
  'effusion 2+ eases back and rests the joint': {
    versions: [1, 2],
    cases: [
      [{ effusion: '1+' }, false],
      [{ effusion: '3+', effusionRun: 1 }, false],
      [{ effusion: '2+', effusionRun: 1 }, true],
    ],
    answers: ['ease-back', null, 'rest-this-joint', 'routine'],
  },
});
