import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import { lieOnYourBack, lowerSlowly } from './exercise-steps.ts';

const liftYourHipsIntoLine = 'Heben Sie das Becken, bis der Körper eine gerade Linie bildet.';
const pushWithTheOtherFoot = 'Drücken Sie mit dem anderen Fuß und heben Sie das Becken.';

export const bridges = {
  'bridge-two-legs': {
    name: 'Brücke auf beiden Beinen',
    steps: [lieOnYourBack, 'Stellen Sie die Füße flach unter die Knie.', liftYourHipsIntoLine, lowerSlowly],
  },
  'bridge-two-legs-weight': {
    name: 'Brücke auf beiden Beinen mit 5 kg auf der Hüfte',
    steps: [
      lieOnYourBack,
      'Halten Sie das Gewicht mit beiden Händen auf der Hüfte.',
      liftYourHipsIntoLine,
      lowerSlowly,
    ],
  },
  'bridge-one-leg-bent': {
    name: 'Brücke auf einem Bein, anderer Fuß knapp über dem Boden',
    steps: [
      lieOnYourBack,
      'Heben Sie einen Fuß ein kleines Stück vom Boden. Dieses Knie bleibt gebeugt.',
      pushWithTheOtherFoot,
      lowerSlowly,
    ],
  },
  'bridge-one-leg': {
    name: 'Brücke auf einem Bein, das andere Bein gestreckt',
    steps: [
      lieOnYourBack,
      'Strecken Sie ein Bein in einer Linie mit dem Körper.',
      pushWithTheOtherFoot,
      lowerSlowly,
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'bridges'>, ExerciseSentences>>;
