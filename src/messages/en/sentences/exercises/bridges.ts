import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import { lieOnYourBack, lowerSlowly } from './exercise-steps.ts';

const liftYourHipsIntoLine = 'Lift your hips until your body is in one line.';
const pushWithTheOtherFoot = 'Push with the other foot and lift your hips.';

export const bridges = {
  'bridge-two-legs': {
    name: 'Bridge on two legs',
    steps: [lieOnYourBack, 'Put your feet flat under your knees.', liftYourHipsIntoLine, lowerSlowly],
  },
  'bridge-two-legs-weight': {
    name: 'Bridge on two legs with 5 kg on the hips',
    steps: [
      lieOnYourBack,
      'Hold the weight on your hips with both hands.',
      liftYourHipsIntoLine,
      lowerSlowly,
    ],
  },
  'bridge-one-leg-bent': {
    name: 'Bridge on one leg, other foot just off the floor',
    steps: [
      lieOnYourBack,
      'Lift one foot just off the floor. Keep that knee bent.',
      pushWithTheOtherFoot,
      lowerSlowly,
    ],
  },
  'bridge-one-leg': {
    name: 'Bridge on one leg, other leg straight',
    steps: [lieOnYourBack, 'Straighten one leg in line with your body.', pushWithTheOtherFoot, lowerSlowly],
  },
} as const satisfies Readonly<Record<ExerciseId<'bridges'>, ExerciseSentences>>;
