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

const holdBothHandles = 'Halten Sie beide Griffe. Stellen Sie sich unter die Befestigung.';
const pullYourChestToTheHandles = 'Ziehen Sie die Brust zu den Griffen.';
const goBackSlowly = 'Lassen Sie sich langsam wieder zurücksinken. Der Körper bleibt gerade.';
const holdOneEndInEachHand = 'Halten Sie in jeder Hand ein Ende.';

export const back = {
  'row-lean-back': {
    name: 'Rudern, Körper um 30° zurückgelehnt',
    steps: [holdBothHandles, 'Lehnen Sie sich ein wenig zurück.', pullYourChestToTheHandles, goBackSlowly],
  },
  'row-lean-back-further': {
    name: 'Rudern, Körper um 38° zurückgelehnt',
    steps: [holdBothHandles, 'Lehnen Sie sich etwas weiter zurück.', pullYourChestToTheHandles, goBackSlowly],
  },
  'row-lean-back-half': {
    name: 'Rudern, Körper um 45° zurückgelehnt',
    steps: [
      holdBothHandles,
      'Lehnen Sie sich zurück, halb bis zum Boden.',
      pullYourChestToTheHandles,
      goBackSlowly,
    ],
  },
  'row-lean-back-low': {
    name: 'Rudern, Körper um 60° zurückgelehnt',
    steps: [
      holdBothHandles,
      'Lehnen Sie sich weit zurück. Die Füße bleiben flach.',
      pullYourChestToTheHandles,
      goBackSlowly,
    ],
  },
  'shoulder-blade-squeeze': {
    name: 'Schulterblätter zusammenziehen',
    steps: [
      'Sitzen Sie aufrecht. Lassen Sie die Arme hängen.',
      'Ziehen Sie die Schulterblätter nach hinten und unten.',
      holdAndBreathe,
      letGo,
    ],
  },
  'row-band-seated': {
    name: 'Rudern mit Band im Sitzen',
    steps: [
      tieTheBandToSomethingFirm,
      holdOneEndInEachHand,
      'Ziehen Sie die Ellbogen nach hinten.',
      comeBackSlowly,
    ],
  },
  'row-one-arm-weight': {
    name: 'Rudern mit Hantel, auf einen Tisch gestützt',
    steps: [
      'Stützen Sie sich mit einer Hand auf einen Tisch. Der Rücken bleibt gerade.',
      'Lassen Sie das Gewicht an der anderen Hand hängen.',
      'Ziehen Sie den Ellbogen am Körper vorbei nach oben.',
      lowerSlowly,
    ],
  },
  'pull-down-band': {
    name: 'Band von oben herunterziehen',
    steps: [
      tieTheBandToSomethingFirmAbove,
      holdOneEndInEachHand,
      'Ziehen Sie die Ellbogen herunter an den Körper.',
      'Lassen Sie die Hände langsam wieder nach oben.',
    ],
  },
  'pull-up-foot-assisted': {
    name: 'Klimmzug mit Hilfe der Füße',
    steps: [
      'Halten Sie die Stange. Die Füße bleiben auf dem Stuhl.',
      'Ziehen Sie sich hoch. Helfen Sie mit den Beinen, so viel Sie brauchen.',
      lowerSlowly,
    ],
  },
  'pull-up': {
    name: 'Klimmzug',
    steps: [
      'Hängen Sie sich an die Stange.',
      'Ziehen Sie sich hoch, bis das Kinn an der Stange ist.',
      lowerSlowly,
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'back'>, ExerciseSentences>>;
