import { describeRule } from '../thresholds.ts';

describeRule('W3', {
  'severe swelling pauses, rests the joint and calls the same day': {
    versions: [1, 2],
    cases: [
      [{ swelling: 'clear' }, false],
      [{ swelling: 'severe' }, true],
    ],
    answers: ['pause', null, 'rest-this-joint', 'same-day'],
  },
});
