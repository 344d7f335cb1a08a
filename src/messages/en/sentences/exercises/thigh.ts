import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import {
  comeBackSlowly,
  holdAndBreathe,
  holdOnToAFirmSupport,
  letGo,
  lowerSlowly,
  tieTheBandToSomethingFirm,
} from './exercise-steps.ts';

const sitNearTheFront = 'Sit near the front of the seat.';
const putYourFeetFlat = 'Put your feet flat, a bit behind your knees.';
const leanForwardAndStandUp = 'Lean forward and stand up.';
const sitDownSlowly = 'Sit down slowly. Do not drop.';
const pushYourHipsBackAndBend = 'Push your hips back and bend your knees.';
const goOnlyAsLowAsKneesLet = 'Go only as low as your knees let you.';
const standUpAgain = 'Stand up again.';
const sitTall = 'Sit tall.';
const straightenYourKnee = 'Straighten your knee as far as you can.';
const holdForAMoment = 'Hold for a moment.';
const putTheWeightOnYourAnkle = 'Put the weight on your ankle.';
const putTheLoopRoundYourAnkle = 'Put the loop round your ankle.';
const bendOneKneeAndBring = 'Bend one knee and bring the heel up behind you.';
const stopWhenTheShinIsLevel = 'Stop when the shin is level.';

export const thigh = {
  'sit-to-stand-high-seat': {
    name: 'Stand up from a high seat, 60 cm',
    steps: [sitNearTheFront, putYourFeetFlat, leanForwardAndStandUp, sitDownSlowly],
  },
  'sit-to-stand-raised-chair': {
    name: 'Stand up from a raised chair, 55 cm',
    steps: [sitNearTheFront, putYourFeetFlat, leanForwardAndStandUp, sitDownSlowly],
  },
  'sit-to-stand-cushion': {
    name: 'Stand up from a chair with a firm cushion, 50 cm',
    steps: [sitNearTheFront, putYourFeetFlat, leanForwardAndStandUp, sitDownSlowly],
  },
  'sit-to-stand-chair': {
    name: 'Stand up from a chair, seat 46 cm',
    steps: [sitNearTheFront, putYourFeetFlat, leanForwardAndStandUp, sitDownSlowly],
  },
  'sit-to-stand-low-chair': {
    name: 'Stand up from a low chair, seat 43 cm',
    steps: [sitNearTheFront, putYourFeetFlat, leanForwardAndStandUp, sitDownSlowly],
  },
  'squat-two-legs': {
    name: 'Squat on two legs, hands near a support',
    steps: [
      'Stand with your feet hip width apart.',
      pushYourHipsBackAndBend,
      goOnlyAsLowAsKneesLet,
      standUpAgain,
    ],
  },
  'squat-two-legs-weights': {
    name: 'Squat on two legs with 5 kg in the hands',
    steps: ['Hold the weights at your sides.', pushYourHipsBackAndBend, goOnlyAsLowAsKneesLet, standUpAgain],
  },
  'step-up': {
    name: 'Step up on one leg',
    steps: [
      'Hold the rail. Put your whole foot on the step.',
      'Push up with that leg.',
      'Do not push off with the other foot.',
      'Step down slowly.',
    ],
  },
  'knee-extension-seated': {
    name: 'Straighten the knee, sitting',
    steps: [sitTall, straightenYourKnee, holdForAMoment, lowerSlowly],
  },
  'knee-extension-seated-one-kilo': {
    name: 'Straighten the knee, sitting, 1 kg at the ankle',
    steps: [putTheWeightOnYourAnkle, sitTall, straightenYourKnee, holdForAMoment, lowerSlowly],
  },
  'knee-press-down': {
    name: 'Press the knee down, lying or sitting',
    steps: [
      'Put a rolled towel under your knee.',
      'Press the knee down into the towel.',
      holdAndBreathe,
      letGo,
    ],
  },
  'wall-sit': {
    name: 'Sit against the wall and hold',
    steps: [
      'Lean your back on the wall. Step forward a bit.',
      'Slide down a little way.',
      'Hold still. Keep breathing.',
      'Slide up again.',
    ],
  },
  'leg-press-band': {
    name: 'Leg press with a band',
    steps: [
      'Sit tall. Put the band round your foot.',
      'Hold both ends at your hips.',
      'Push your foot away until the knee is almost straight.',
      comeBackSlowly,
    ],
  },
  'knee-extension-band': {
    name: 'Straighten the knee against a band',
    steps: [
      'Tie the band to the back leg of the chair.',
      putTheLoopRoundYourAnkle,
      'Straighten your knee.',
      comeBackSlowly,
    ],
  },
  'knee-bend-standing': {
    name: 'Bend the knee, standing',
    steps: [holdOnToAFirmSupport, bendOneKneeAndBring, stopWhenTheShinIsLevel, lowerSlowly],
  },
  'knee-bend-standing-one-kilo': {
    name: 'Bend the knee, standing, 1 kg at the ankle',
    steps: [
      putTheWeightOnYourAnkle,
      holdOnToAFirmSupport,
      bendOneKneeAndBring,
      stopWhenTheShinIsLevel,
      lowerSlowly,
    ],
  },
  'knee-bend-band': {
    name: 'Bend the knee against a band, sitting',
    steps: [
      tieTheBandToSomethingFirm,
      putTheLoopRoundYourAnkle,
      'Pull your heel back under the chair.',
      comeBackSlowly,
    ],
  },
  'hip-hinge-stick': {
    name: 'Bow from the hips with a stick along the back',
    steps: [
      'Hold a stick along your back.',
      'Keep head, back and hips on the stick.',
      'Bow forward from your hips.',
      standUpAgain,
    ],
  },
  'hip-hinge-weights': {
    name: 'Bow from the hips with hand weights',
    steps: [
      'Hold a weight in each hand.',
      'Keep your back straight and bow from your hips.',
      'Let the weights slide down your thighs.',
      standUpAgain,
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'thigh'>, ExerciseSentences>>;
