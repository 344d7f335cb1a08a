import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import {
  holdAndBreathe,
  holdForThreeSlowCounts,
  letGo,
  lieOnYourBack,
  lowerSlowly,
} from './exercise-steps.ts';

const comeBackAndChangeSides = 'Come back and change sides.';
const lieOnYourFront = 'Lie on your front. Prop up on your forearms.';
const holdAStraightLine = 'Hold a straight line. Keep breathing.';
const pressGently = 'Press gently. Do not let your head move.';

export const trunkAndNeck = {
  'belly-press': {
    name: 'Press the low back down, lying on the back',
    steps: [lieOnYourBack, 'Pull your belly in and press your low back down.', holdAndBreathe, letGo],
  },
  'heel-slide': {
    name: 'Slide one heel out with a still back',
    steps: [
      lieOnYourBack,
      'Pull your belly in.',
      'Slide one heel out, then back.',
      'Change legs. Keep your back still.',
    ],
  },
  'arm-and-leg-lowering': {
    name: 'Lower opposite arm and leg, lying on the back',
    steps: [
      'Lie on your back. Lift both arms and both bent knees.',
      'Lower one arm and the other leg.',
      comeBackAndChangeSides,
      'Keep your back still.',
    ],
  },
  'forearm-plank-knees': {
    name: 'Forearm plank on the knees',
    steps: [lieOnYourFront, 'Lift your hips. Keep your knees down.', holdAStraightLine, lowerSlowly],
  },
  'forearm-plank': {
    name: 'Forearm plank on the feet',
    steps: [lieOnYourFront, 'Lift your hips and knees.', holdAStraightLine, lowerSlowly],
  },
  'arm-and-leg-reach': {
    name: 'Reach out opposite arm and leg on all fours',
    steps: [
      'Go on your hands and knees.',
      'Reach out one arm and the other leg.',
      'Keep your back level.',
      comeBackAndChangeSides,
    ],
  },
  'chest-lift': {
    name: 'Lift the chest, lying on the front',
    steps: [
      'Lie on your front. Put your arms at your sides.',
      'Lift your chest a little. Look at the floor.',
      lowerSlowly,
    ],
  },
  'side-plank-knees': {
    name: 'Side plank on the knees',
    steps: [
      'Lie on your side. Bend your knees.',
      'Prop up on your forearm.',
      'Lift your hips. Hold. Keep breathing.',
      lowerSlowly,
    ],
  },
  'chin-draw': {
    name: 'Draw the chin in',
    steps: ['Sit tall. Look straight ahead.', 'Draw your chin straight back.', holdForThreeSlowCounts, letGo],
  },
  'neck-press-front': {
    name: 'Press the forehead into the hands',
    steps: ['Put both hands on your forehead.', pressGently, holdAndBreathe, letGo],
  },
  'neck-press-side': {
    name: 'Press the side of the head into the hand',
    steps: [
      'Put one hand on the side of your head.',
      pressGently,
      holdAndBreathe,
      'Let go. Then do the other side.',
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'trunk-and-neck'>, ExerciseSentences>>;
