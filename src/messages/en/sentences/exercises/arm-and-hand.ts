import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import {
  bendYourElbow,
  comeBackSlowly,
  holdForThreeSlowCounts,
  holdItWithBothHands,
  letGo,
  lowerSlowly,
  tieTheBandToSomethingFirmAbove,
} from './exercise-steps.ts';

const sitTallWithTheWeight = 'Sit tall. Let your arm hang with the weight.';
const bendYourElbowAndLift = 'Bend your elbow and lift the weight.';
const sitTallElbowUp = 'Sit tall. Point your elbow to the ceiling.';
const letTheHandComeDown = 'Let the hand come down behind your head.';
const straightenYourElbow = 'Straighten your elbow.';
const letTheHandWithTheWeight = 'Let the hand with the weight hang over the edge.';

export const armAndHand = {
  'curl-seated': { name: 'Curl, sitting', steps: [sitTallWithTheWeight, bendYourElbowAndLift, lowerSlowly] },
  'curl-seated-one-kilo': {
    name: 'Curl, sitting, 1 kg in the hand',
    steps: [sitTallWithTheWeight, bendYourElbowAndLift, lowerSlowly],
  },
  'curl-seated-two-kilos': {
    name: 'Curl, sitting, 2 kg in the hand',
    steps: [sitTallWithTheWeight, bendYourElbowAndLift, lowerSlowly],
  },
  'overhead-extension': {
    name: 'Straighten the elbow overhead',
    steps: [sitTallElbowUp, letTheHandComeDown, straightenYourElbow, lowerSlowly],
  },
  'overhead-extension-one-kilo': {
    name: 'Straighten the elbow overhead, 1 kg in the hand',
    steps: [sitTallElbowUp, letTheHandComeDown, straightenYourElbow, lowerSlowly],
  },
  'curl-band': {
    name: 'Bend the elbow against a band',
    steps: ['Put your foot on the band.', 'Hold the end in your hand.', bendYourElbow, lowerSlowly],
  },
  'press-down-band': {
    name: 'Press a band down',
    steps: [
      tieTheBandToSomethingFirmAbove,
      'Keep your elbow at your side.',
      'Press your hand down until the arm is straight.',
      comeBackSlowly,
    ],
  },
  'wrist-bend-up': {
    name: 'Bend the wrist, palm up',
    steps: [
      'Rest your forearm on a table, palm up.',
      letTheHandWithTheWeight,
      'Bend your wrist up.',
      lowerSlowly,
    ],
  },
  'wrist-bend-back': {
    name: 'Bend the wrist back, palm down',
    steps: [
      'Rest your forearm on a table, palm down.',
      letTheHandWithTheWeight,
      'Lift the back of your hand.',
      lowerSlowly,
    ],
  },
  'ball-squeeze': {
    name: 'Squeeze a soft ball',
    steps: ['Hold a soft ball.', 'Squeeze it as far as is comfortable.', holdForThreeSlowCounts, letGo],
  },
  'towel-wring': {
    name: 'Wring a towel',
    steps: ['Roll up a towel.', holdItWithBothHands, 'Wring it slowly one way, then the other.'],
  },
  'finger-spread': {
    name: 'Spread the fingers against a rubber ring',
    steps: ['Put the ring round your fingers and thumb.', 'Spread your fingers.', 'Close them slowly.'],
  },
} as const satisfies Readonly<Record<ExerciseId<'arm-and-hand'>, ExerciseSentences>>;
