import { describeRule } from '../thresholds.ts';

describeRule('W2', {
  'clear swelling eases back and rests the joint': {
    versions: [1, 2],
    cases: [
      [{ swelling: 'slight' }, false],
      [{ swelling: 'clear', usualSwelling: 'slight' }, true],
      [{ swelling: 'clear' }, true],
    ],
    answers: ['ease-back', null, 'rest-this-joint', 'routine'],
  },
});
