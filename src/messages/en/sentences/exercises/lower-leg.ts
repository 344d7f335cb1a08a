import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import {
  holdItWithBothHands,
  holdOnToAFirmSupport,
  lowerSlowly,
  tieTheBandToSomethingFirm,
} from './exercise-steps.ts';

const riseUpOnYourToes = 'Rise up on your toes.';
const keepYourHeelsDown = 'Keep your heels down.';
const liftTheFrontOfBothFeet = 'Lift the front of both feet.';

export const lowerLeg = {
  'heel-raise-two-legs': {
    name: 'Heel raise on two legs',
    steps: [holdOnToAFirmSupport, riseUpOnYourToes, lowerSlowly],
  },
  'heel-raise-two-legs-weight': {
    name: 'Heel raise on two legs with 5 kg in a backpack',
    steps: ['Put on the backpack. Hold on to a firm support.', riseUpOnYourToes, lowerSlowly],
  },
  'heel-raise-one-leg': {
    name: 'Heel raise on one leg',
    steps: [holdOnToAFirmSupport, 'Stand on one leg.', riseUpOnYourToes, lowerSlowly],
  },
  'heel-raise-seated': {
    name: 'Heel raise, sitting, weight on the thigh',
    steps: [
      'Sit tall. Put the weight on one thigh, near the knee.',
      holdItWithBothHands,
      'Lift that heel.',
      lowerSlowly,
    ],
  },
  'toe-raise-seated': {
    name: 'Lift the front of the foot, sitting',
    steps: ['Sit tall with your feet flat.', keepYourHeelsDown, liftTheFrontOfBothFeet, lowerSlowly],
  },
  'toe-raise-standing': {
    name: 'Lift the front of the foot, back against a wall',
    steps: [
      'Lean your back on the wall. Put your feet a step away.',
      keepYourHeelsDown,
      liftTheFrontOfBothFeet,
      lowerSlowly,
    ],
  },
  'toe-raise-band': {
    name: 'Pull the foot up against a band',
    steps: [
      tieTheBandToSomethingFirm,
      'Put the loop round the front of your foot.',
      'Pull your foot up.',
      'Let it go back slowly.',
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'lower-leg'>, ExerciseSentences>>;
