/** The hand with putty, a ring and small weights, and held without movement. */
import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import { holdAndBreathe, letGo, lowerSlowly } from './exercise-steps.ts';

const keepTheThumbRound = 'Keep your thumb rounded and its tip bent.';
const letGoSlowly = 'Let go slowly.';
const restYourForearm = 'Rest your forearm on a table, thumb up.';

export const hand = {
  'putty-squeeze': {
    name: 'Squeeze putty with the whole hand',
    steps: ['Put the putty in your palm.', 'Close your whole hand on it.', letGo, 'Roll it round again.'],
  },
  'putty-hook': {
    name: 'Hook your fingertips into putty',
    steps: [
      'Lay a roll of putty across your palm.',
      'Keep your knuckles straight.',
      'Bend only your fingertips into the putty.',
      letGo,
    ],
  },
  'putty-tip-pinch': {
    name: 'Pinch putty between thumb and fingertip',
    steps: [
      keepTheThumbRound,
      'Pinch the putty between thumb and fingertip.',
      letGo,
      'Go on along the roll.',
    ],
  },
  'putty-key-pinch': {
    name: 'Press putty against the side of your finger',
    steps: [
      'Put the putty on the side of your index finger.',
      keepTheThumbRound,
      'Press down with your thumb, as if you turned a key.',
      letGo,
    ],
  },
  'putty-finger-spread': {
    name: 'Spread your fingers inside a ring of putty',
    steps: [
      'Lay a ring of putty round your fingers and thumb.',
      'Spread your fingers.',
      'Close them slowly.',
    ],
  },
  'thumb-out-ring': {
    name: 'Move your thumb out against a rubber ring',
    steps: [
      'Put the ring round your thumb and your palm.',
      'Move your thumb out, away from your hand.',
      'Let it come back slowly.',
    ],
  },
  'finger-straighten-ring': {
    name: 'Straighten your fingers against a rubber ring',
    steps: [
      'Bend your fingers and put the ring round fingers and thumb.',
      'Straighten your fingers.',
      'Bend them slowly.',
    ],
  },
  'wrist-thumb-side-lift': {
    name: 'Lift the thumb side of your hand with a weight',
    steps: [
      restYourForearm,
      'Let your hand with the weight hang over the edge.',
      'Lift the thumb side of your hand.',
      lowerSlowly,
    ],
  },
  'palm-turn': {
    name: 'Turn your palm up and down with a weight',
    steps: [restYourForearm, 'Hold the weight in your hand.', 'Turn your palm up slowly, then down.'],
  },
  'thumb-out-hold': {
    name: 'Press your thumb out against your other hand',
    steps: [
      'Put the other hand outside your thumb.',
      'Press your thumb out. Let nothing move.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
  'index-side-hold': {
    name: 'Press your index finger to the thumb side',
    steps: [
      'Lay your hand flat.',
      'Put the other hand beside your index finger, on the thumb side.',
      'Press your index finger to that side. Let nothing move.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
  'tip-pinch-hold': {
    name: 'Make a round O and press the tips together',
    steps: [
      'Make a round O with thumb and index finger.',
      'Press the tips together lightly.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
  'towel-grip-hold': {
    name: 'Hold a rolled towel in your grip',
    steps: ['Take a rolled towel in your hand.', 'Close your hand on it.', holdAndBreathe, letGoSlowly],
  },
  'palm-press-hold': {
    name: 'Press your palm down on a table',
    steps: [
      'Rest your forearm and hand on a table, palm down.',
      'Press your palm down. Let nothing move.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
  'back-of-hand-press-hold': {
    name: 'Press the back of your hand up under a table',
    steps: [
      'Put your hand under a heavy table, palm down.',
      'Press the back of your hand up. Let nothing move.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'hand'>, ExerciseSentences>>;
