import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import { comeBackSlowly } from './exercise-steps.ts';

const sitBack = 'Sit with your back against the pad.';
const goUpSlowly = 'Let it go up slowly.';

export const machines = {
  'leg-press-machine': {
    name: 'Leg press, two legs',
    steps: [
      sitBack,
      'Put both feet flat on the plate.',
      'Push until your knees are almost straight.',
      comeBackSlowly,
    ],
  },
  'leg-press-machine-one-leg': {
    name: 'Leg press, one leg',
    steps: [
      sitBack,
      'Put one foot flat on the plate.',
      'Push until your knee is almost straight.',
      comeBackSlowly,
    ],
  },
  'knee-extension-machine': {
    name: 'Straighten the knee on the machine',
    steps: [sitBack, 'Put your shin behind the pad.', 'Straighten your knee.', comeBackSlowly],
  },
  'leg-curl-machine': {
    name: 'Bend the knee on the machine, sitting',
    steps: [sitBack, 'Put your calf on the pad.', 'Bend your knee and press the pad down.', comeBackSlowly],
  },
  'chest-press-machine': {
    name: 'Chest press on the machine, sitting',
    steps: [sitBack, 'Hold both handles.', 'Push until your elbows are almost straight.', comeBackSlowly],
  },
  'cable-row': {
    name: 'Row at the cable, sitting',
    steps: ['Sit tall. Hold the handle.', 'Pull your elbows back.', comeBackSlowly],
  },
  'cable-pull-down': {
    name: 'Pull the cable down from above, sitting',
    steps: ['Sit tall. Hold the bar above you.', 'Pull your elbows down to your sides.', goUpSlowly],
  },
} as const satisfies Readonly<Record<ExerciseId<'machines'>, ExerciseSentences>>;
