import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import {
  comeBackSlowly,
  holdAndBreathe,
  letGo,
  lowerSlowly,
  tieTheBandToSomethingFirm,
  tieTheBandToSomethingFirmAbove,
} from './exercise-steps.ts';

const holdBothHandles = 'Hold both handles. Stand under the anchor.';
const pullYourChestToTheHandles = 'Pull your chest to the handles.';
const goBackSlowly = 'Go back slowly. Keep your body straight.';
const holdOneEndInEachHand = 'Hold one end in each hand.';

export const back = {
  'row-lean-back': {
    name: 'Lean-back row, body 30° from upright',
    steps: [holdBothHandles, 'Lean back a little.', pullYourChestToTheHandles, goBackSlowly],
  },
  'row-lean-back-further': {
    name: 'Lean-back row, body 38° from upright',
    steps: [holdBothHandles, 'Lean back a bit more.', pullYourChestToTheHandles, goBackSlowly],
  },
  'row-lean-back-half': {
    name: 'Lean-back row, body 45° from upright',
    steps: [holdBothHandles, 'Lean back halfway to the floor.', pullYourChestToTheHandles, goBackSlowly],
  },
  'row-lean-back-low': {
    name: 'Lean-back row, body 60° from upright',
    steps: [holdBothHandles, 'Lean back far. Keep your feet flat.', pullYourChestToTheHandles, goBackSlowly],
  },
  'shoulder-blade-squeeze': {
    name: 'Squeeze the shoulder blades together',
    steps: [
      'Sit tall. Let your arms hang.',
      'Pull your shoulder blades back and down.',
      holdAndBreathe,
      letGo,
    ],
  },
  'row-band-seated': {
    name: 'Row with a band, sitting',
    steps: [tieTheBandToSomethingFirm, holdOneEndInEachHand, 'Pull your elbows back.', comeBackSlowly],
  },
  'row-one-arm-weight': {
    name: 'Row with a hand weight, leaning on a table',
    steps: [
      'Lean on a table with one hand. Keep your back straight.',
      'Let the weight hang from the other hand.',
      'Pull your elbow up past your side.',
      lowerSlowly,
    ],
  },
  'pull-down-band': {
    name: 'Pull a band down from above',
    steps: [
      tieTheBandToSomethingFirmAbove,
      holdOneEndInEachHand,
      'Pull your elbows down to your sides.',
      'Go up slowly.',
    ],
  },
  'pull-up-foot-assisted': {
    name: 'Pull-up with the feet helping',
    steps: [
      'Hold the bar. Keep your feet on the chair.',
      'Pull up. Help with your legs as much as you need.',
      lowerSlowly,
    ],
  },
  'pull-up': {
    name: 'Pull-up',
    steps: ['Hang from the bar.', 'Pull up until your chin is at the bar.', lowerSlowly],
  },
} as const satisfies Readonly<Record<ExerciseId<'back'>, ExerciseSentences>>;
