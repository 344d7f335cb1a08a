import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import { holdAndBreathe, holdOnToAFirmSupport, letGo, lowerSlowly } from './exercise-steps.ts';

const liftTheLegToTheHeight = 'Lift the straight leg to the height of the bent knee.';
const keepYourBodyUpright = 'Keep your body upright.';
const lieOnYourSide = 'Lie on your side. Bend both knees.';
const keepYourHipsDown = 'Keep your hips down.';
const liftTheTopKnee = 'Lift the top knee.';

export const legRaises = {
  'front-leg-raise-standing': {
    name: 'Straight leg raise to the front, standing, 30°',
    steps: [
      holdOnToAFirmSupport,
      'Keep your knee straight.',
      'Lift the leg a little to the front.',
      lowerSlowly,
    ],
  },
  'march-standing': {
    name: 'Lift the bent knee, standing',
    steps: [holdOnToAFirmSupport, 'Lift one knee until the thigh is level.', lowerSlowly],
  },
  'straight-leg-raise': {
    name: 'Straight leg raise, lying on the back',
    steps: [
      'Lie on your back. Bend one knee.',
      'Keep the other knee straight.',
      liftTheLegToTheHeight,
      lowerSlowly,
    ],
  },
  'straight-leg-raise-one-kilo': {
    name: 'Straight leg raise, lying on the back, 1 kg at the ankle',
    steps: [
      'Put the weight on your ankle. Lie on your back.',
      'Bend the other knee. Keep the leg with the weight straight.',
      liftTheLegToTheHeight,
      lowerSlowly,
    ],
  },
  'side-leg-raise-standing': {
    name: 'Straight leg raise to the side, standing, 30°',
    steps: [holdOnToAFirmSupport, keepYourBodyUpright, 'Lift one leg out to the side.', lowerSlowly],
  },
  'side-lying-hip-abduction-bent': {
    name: 'Leg raise with bent knee, lying on the side',
    steps: [lieOnYourSide, 'Lift the top leg. Keep the knee bent.', 'Keep your hips still.', lowerSlowly],
  },
  'side-lying-hip-abduction': {
    name: 'Leg raise, lying on the side',
    steps: [
      'Lie on your side. Bend the lower leg.',
      'Keep the top leg straight, in line with your body.',
      'Lift the top leg.',
      lowerSlowly,
    ],
  },
  'rear-leg-raise-standing': {
    name: 'Straight leg raise to the back, standing, 20°',
    steps: [
      holdOnToAFirmSupport,
      keepYourBodyUpright,
      'Move one leg straight back.',
      'Bring it back slowly.',
    ],
  },
  'rear-leg-raise-bent': {
    name: 'Leg raise with bent knee, lying on the front',
    steps: [
      'Lie on your front. Bend one knee.',
      'Lift that thigh a little off the floor.',
      keepYourHipsDown,
      lowerSlowly,
    ],
  },
  'rear-leg-raise-straight': {
    name: 'Straight leg raise, lying on the front',
    steps: [
      'Lie on your front. Keep both legs straight.',
      'Lift one leg a little off the floor.',
      keepYourHipsDown,
      lowerSlowly,
    ],
  },
  'pillow-squeeze': {
    name: 'Squeeze a pillow between the knees',
    steps: ['Put a pillow between your knees.', 'Squeeze your knees together.', holdAndBreathe, letGo],
  },
  'inner-leg-raise': {
    name: 'Raise the lower leg, lying on the side',
    steps: [
      'Lie on your side. Bend the top leg and put it in front.',
      'Keep the lower leg straight.',
      'Lift the lower leg.',
      lowerSlowly,
    ],
  },
  clam: {
    name: 'Open the knees, lying on the side',
    steps: [lieOnYourSide, 'Keep your feet together.', liftTheTopKnee, lowerSlowly],
  },
  'clam-band': {
    name: 'Open the knees against a band, lying on the side',
    steps: [
      'Put a band round both thighs. Lie on your side.',
      'Bend both knees. Keep your feet together.',
      liftTheTopKnee,
      lowerSlowly,
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'leg-raises'>, ExerciseSentences>>;
