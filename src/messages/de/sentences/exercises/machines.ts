import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import { comeBackSlowly } from './exercise-steps.ts';

const sitBack = 'Setzen Sie sich mit dem Rücken an das Polster.';

export const machines = {
  'leg-press-machine': {
    name: 'Beinpresse mit beiden Beinen',
    steps: [
      sitBack,
      'Stellen Sie beide Füße flach auf die Platte.',
      'Drücken Sie, bis die Knie fast gestreckt sind.',
      comeBackSlowly,
    ],
  },
  'leg-press-machine-one-leg': {
    name: 'Beinpresse mit einem Bein',
    steps: [
      sitBack,
      'Stellen Sie einen Fuß flach auf die Platte.',
      'Drücken Sie, bis das Knie fast gestreckt ist.',
      comeBackSlowly,
    ],
  },
  'knee-extension-machine': {
    name: 'Knie strecken am Gerät',
    steps: [
      sitBack,
      'Legen Sie das Schienbein hinter das Polster.',
      'Strecken Sie das Knie.',
      comeBackSlowly,
    ],
  },
  'leg-curl-machine': {
    name: 'Knie beugen am Gerät, im Sitzen',
    steps: [
      sitBack,
      'Legen Sie die Wade auf das Polster.',
      'Beugen Sie das Knie und drücken Sie das Polster nach unten.',
      comeBackSlowly,
    ],
  },
  'chest-press-machine': {
    name: 'Brustpresse am Gerät, im Sitzen',
    steps: [
      sitBack,
      'Fassen Sie beide Griffe.',
      'Drücken Sie, bis die Ellbogen fast gestreckt sind.',
      comeBackSlowly,
    ],
  },
  'cable-row': {
    name: 'Rudern am Seilzug, im Sitzen',
    steps: [
      'Sitzen Sie aufrecht. Fassen Sie den Griff.',
      'Ziehen Sie die Ellbogen nach hinten.',
      comeBackSlowly,
    ],
  },
  'cable-pull-down': {
    name: 'Seilzug von oben herunterziehen, im Sitzen',
    steps: [
      'Sitzen Sie aufrecht. Fassen Sie die Stange über sich.',
      'Ziehen Sie die Ellbogen nach unten an den Körper.',
      'Lassen Sie die Stange langsam wieder nach oben.',
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'machines'>, ExerciseSentences>>;
