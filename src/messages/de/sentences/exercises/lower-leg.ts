import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import {
  holdItWithBothHands,
  holdOnToAFirmSupport,
  lowerSlowly,
  tieTheBandToSomethingFirm,
} from './exercise-steps.ts';

const riseUpOnYourToes = 'Kommen Sie hoch auf die Zehenspitzen.';
const keepYourHeelsDown = 'Die Fersen bleiben unten.';
const liftTheFrontOfBothFeet = 'Heben Sie beide Fußspitzen.';

export const lowerLeg = {
  'heel-raise-two-legs': {
    name: 'Fersen heben auf beiden Beinen',
    steps: [holdOnToAFirmSupport, riseUpOnYourToes, lowerSlowly],
  },
  'heel-raise-two-legs-weight': {
    name: 'Fersen heben auf beiden Beinen mit 5 kg im Rucksack',
    steps: [
      'Setzen Sie den Rucksack auf. Halten Sie sich an etwas Festem fest.',
      riseUpOnYourToes,
      lowerSlowly,
    ],
  },
  'heel-raise-one-leg': {
    name: 'Ferse heben auf einem Bein',
    steps: [holdOnToAFirmSupport, 'Stellen Sie sich auf ein Bein.', riseUpOnYourToes, lowerSlowly],
  },
  'heel-raise-seated': {
    name: 'Ferse heben im Sitzen, Gewicht auf dem Oberschenkel',
    steps: [
      'Sitzen Sie aufrecht. Legen Sie das Gewicht auf einen Oberschenkel, nah am Knie.',
      holdItWithBothHands,
      'Heben Sie diese Ferse.',
      lowerSlowly,
    ],
  },
  'toe-raise-seated': {
    name: 'Fußspitzen heben im Sitzen',
    steps: [
      'Sitzen Sie aufrecht, die Füße flach am Boden.',
      keepYourHeelsDown,
      liftTheFrontOfBothFeet,
      lowerSlowly,
    ],
  },
  'toe-raise-standing': {
    name: 'Fußspitzen heben, Rücken an der Wand',
    steps: [
      'Lehnen Sie den Rücken an die Wand. Die Füße stehen einen Schritt vor der Wand.',
      keepYourHeelsDown,
      liftTheFrontOfBothFeet,
      lowerSlowly,
    ],
  },
  'toe-raise-band': {
    name: 'Fuß gegen ein Band hochziehen',
    steps: [
      tieTheBandToSomethingFirm,
      'Legen Sie die Schlaufe vorn um den Fuß.',
      'Ziehen Sie den Fuß hoch.',
      'Lassen Sie ihn langsam zurückgehen.',
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'lower-leg'>, ExerciseSentences>>;
