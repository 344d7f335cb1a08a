import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import { bendYourElbow, comeBackSlowly, holdAndBreathe, letGo, lowerSlowly } from './exercise-steps.ts';

const standAtArmsLength = 'Stand at arm’s length from the wall.';
const putYourHandsOnTheWall = 'Put your hands on the wall at shoulder height.';
const bendYourElbows = 'Bend your elbows, then push away.';
const putYourHandsOnAFixedSupport = 'Put your hands on a fixed support. Check that it cannot slide.';
const walkYourFeetBack = 'Walk your feet back until your body is straight.';
const bendYourElbowsAndComeDown = 'Bend your elbows and come down.';
const pushBackUp = 'Push back up.';
const putYourHandsOnTheFloor = 'Put your hands on the floor under your shoulders.';
const comeDownSlowly = 'Come down slowly.';
const letYourArmHang = 'Let your arm hang.';

export const chestAndShoulder = {
  'wall-push-up-near': {
    name: 'Push-up against the wall, feet near',
    steps: [
      standAtArmsLength,
      'Step back by half a foot length and a bit.',
      putYourHandsOnTheWall,
      bendYourElbows,
    ],
  },
  'wall-push-up': {
    name: 'Push-up against the wall',
    steps: [standAtArmsLength, 'Step back by one foot length.', putYourHandsOnTheWall, bendYourElbows],
  },
  'incline-push-up-high': {
    name: 'Push-up with hands at 90 cm',
    steps: [putYourHandsOnAFixedSupport, walkYourFeetBack, bendYourElbowsAndComeDown, pushBackUp],
  },
  'incline-push-up-table': {
    name: 'Push-up with hands at 75 cm',
    steps: [putYourHandsOnAFixedSupport, walkYourFeetBack, bendYourElbowsAndComeDown, pushBackUp],
  },
  'incline-push-up-middle': {
    name: 'Push-up with hands at 60 cm',
    steps: [putYourHandsOnAFixedSupport, walkYourFeetBack, bendYourElbowsAndComeDown, pushBackUp],
  },
  'incline-push-up-low': {
    name: 'Push-up with hands at 45 cm',
    steps: [putYourHandsOnAFixedSupport, walkYourFeetBack, bendYourElbowsAndComeDown, pushBackUp],
  },
  'incline-push-up-step': {
    name: 'Push-up with hands at 30 cm',
    steps: [putYourHandsOnAFixedSupport, walkYourFeetBack, bendYourElbowsAndComeDown, pushBackUp],
  },
  'knee-push-up': {
    name: 'Push-up on the knees',
    steps: [
      'Kneel on a soft mat. Put your hands on the floor.',
      'Keep your body straight from knee to shoulder.',
      bendYourElbowsAndComeDown,
      pushBackUp,
    ],
  },
  'push-up': {
    name: 'Push-up on the floor',
    steps: [
      putYourHandsOnTheFloor,
      'Keep your body straight from heel to shoulder.',
      bendYourElbowsAndComeDown,
      pushBackUp,
    ],
  },
  'push-up-feet-raised': {
    name: 'Push-up with feet at 30 cm',
    steps: ['Put your feet on a fixed step.', putYourHandsOnTheFloor, bendYourElbowsAndComeDown, pushBackUp],
  },
  'chest-press-band': {
    name: 'Chest press with a band, sitting',
    steps: [
      'Put the band round the back of the chair.',
      'Hold one end in each hand at your chest.',
      'Push both hands forward.',
      comeBackSlowly,
    ],
  },
  'chest-press-lying': {
    name: 'Chest press with hand weights, lying on the back',
    steps: [
      'Lie on your back. Hold the weights over your chest.',
      'Bend your elbows and let the weights come down.',
      'Push up again.',
    ],
  },
  'overhead-press-band': {
    name: 'Press a band overhead, sitting',
    steps: [
      'Sit on the band. Hold one end in each hand.',
      'Push your hands up.',
      'Stop where your shoulder lets you.',
      comeDownSlowly,
    ],
  },
  'overhead-press-weights': {
    name: 'Press hand weights overhead, sitting',
    steps: ['Sit tall. Hold the weights at your shoulders.', 'Push them up.', comeDownSlowly],
  },
  'front-arm-raise-bent': {
    name: 'Raise the bent arm to the front',
    steps: [bendYourElbow, 'Lift the upper arm to the front until it is level.', lowerSlowly],
  },
  'front-arm-raise-straight': {
    name: 'Raise the straight arm to the front',
    steps: [letYourArmHang, 'Lift it straight to the front until it is level.', lowerSlowly],
  },
  'side-arm-raise-bent': {
    name: 'Raise the bent arm to the side',
    steps: [bendYourElbow, 'Lift the upper arm to the side until it is level.', lowerSlowly],
  },
  'side-arm-raise-straight': {
    name: 'Raise the straight arm to the side',
    steps: [letYourArmHang, 'Lift it straight to the side until it is level.', lowerSlowly],
  },
  'arm-turn-out-hold': {
    name: 'Press the back of the hand into a door frame',
    steps: [
      'Stand next to a door frame. Bend your elbow at your side.',
      'Press the back of your hand into the frame.',
      holdAndBreathe,
      letGo,
    ],
  },
  'arm-turn-out-band': {
    name: 'Turn the arm out against a band',
    steps: [
      'Keep your elbow bent at your side.',
      'Hold the band with the hand in front of your belly.',
      'Turn your forearm out.',
      comeBackSlowly,
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'chest-and-shoulder'>, ExerciseSentences>>;
