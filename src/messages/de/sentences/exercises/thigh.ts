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

const sitNearTheFront = 'Setzen Sie sich vorn auf den Sitz.';
const putYourFeetFlat = 'Stellen Sie die Füße flach auf, etwas weiter hinten als die Knie.';
const leanForwardAndStandUp = 'Beugen Sie sich vor und stehen Sie auf.';
const sitDownSlowly = 'Setzen Sie sich langsam wieder hin. Lassen Sie sich nicht fallen.';
const pushYourHipsBackAndBend = 'Schieben Sie das Gesäß nach hinten und beugen Sie die Knie.';
const goOnlyAsLowAsKneesLet = 'Gehen Sie nur so tief, wie die Knie es zulassen.';
const standUpAgain = 'Richten Sie sich wieder auf.';
const sitTall = 'Sitzen Sie aufrecht.';
const straightenYourKnee = 'Strecken Sie das Knie, so weit Sie können.';
const holdForAMoment = 'Bleiben Sie kurz so.';
const putTheWeightOnYourAnkle = 'Legen Sie das Gewicht am Fußgelenk an.';
const putTheLoopRoundYourAnkle = 'Legen Sie die Schlaufe um das Fußgelenk.';
const bendOneKneeAndBring = 'Beugen Sie ein Knie und heben Sie die Ferse nach hinten.';
const stopWhenTheShinIsLevel = 'Nur so weit, bis der Unterschenkel waagerecht ist.';

export const thigh = {
  'sit-to-stand-high-seat': {
    name: 'Aufstehen vom hohen Sitz, 60 cm',
    steps: [sitNearTheFront, putYourFeetFlat, leanForwardAndStandUp, sitDownSlowly],
  },
  'sit-to-stand-raised-chair': {
    name: 'Aufstehen vom erhöhten Stuhl, 55 cm',
    steps: [sitNearTheFront, putYourFeetFlat, leanForwardAndStandUp, sitDownSlowly],
  },
  'sit-to-stand-cushion': {
    name: 'Aufstehen vom Stuhl mit festem Kissen, 50 cm',
    steps: [sitNearTheFront, putYourFeetFlat, leanForwardAndStandUp, sitDownSlowly],
  },
  'sit-to-stand-chair': {
    name: 'Aufstehen vom Stuhl, Sitz 46 cm',
    steps: [sitNearTheFront, putYourFeetFlat, leanForwardAndStandUp, sitDownSlowly],
  },
  'sit-to-stand-low-chair': {
    name: 'Aufstehen vom niedrigen Stuhl, Sitz 43 cm',
    steps: [sitNearTheFront, putYourFeetFlat, leanForwardAndStandUp, sitDownSlowly],
  },
  'squat-two-legs': {
    name: 'Kniebeuge auf beiden Beinen, Hände nah an einem Halt',
    steps: [
      'Stellen Sie die Füße hüftbreit auf.',
      pushYourHipsBackAndBend,
      goOnlyAsLowAsKneesLet,
      standUpAgain,
    ],
  },
  'squat-two-legs-weights': {
    name: 'Kniebeuge auf beiden Beinen mit 5 kg in den Händen',
    steps: [
      'Halten Sie die Gewichte seitlich am Körper.',
      pushYourHipsBackAndBend,
      goOnlyAsLowAsKneesLet,
      standUpAgain,
    ],
  },
  'step-up': {
    name: 'Auf eine Stufe steigen, mit einem Bein',
    steps: [
      'Halten Sie sich am Geländer fest. Stellen Sie den ganzen Fuß auf die Stufe.',
      'Drücken Sie sich mit diesem Bein hoch.',
      'Stoßen Sie sich mit dem anderen Fuß nicht ab.',
      'Steigen Sie langsam wieder herunter.',
    ],
  },
  'knee-extension-seated': {
    name: 'Knie strecken im Sitzen',
    steps: [sitTall, straightenYourKnee, holdForAMoment, lowerSlowly],
  },
  'knee-extension-seated-one-kilo': {
    name: 'Knie strecken im Sitzen, 1 kg am Fußgelenk',
    steps: [putTheWeightOnYourAnkle, sitTall, straightenYourKnee, holdForAMoment, lowerSlowly],
  },
  'knee-press-down': {
    name: 'Knie nach unten drücken, im Liegen oder Sitzen',
    steps: [
      'Legen Sie ein gerolltes Handtuch unter das Knie.',
      'Drücken Sie das Knie nach unten in das Handtuch.',
      holdAndBreathe,
      letGo,
    ],
  },
  'wall-sit': {
    name: 'An der Wand sitzen und halten',
    steps: [
      'Lehnen Sie den Rücken an die Wand. Gehen Sie mit den Füßen etwas vor.',
      'Rutschen Sie ein kleines Stück nach unten.',
      'Bleiben Sie so. Atmen Sie weiter.',
      'Schieben Sie sich wieder hoch.',
    ],
  },
  'leg-press-band': {
    name: 'Beinpresse mit Band',
    steps: [
      'Sitzen Sie aufrecht. Legen Sie das Band um den Fuß.',
      'Halten Sie beide Enden an der Hüfte.',
      'Drücken Sie den Fuß weg, bis das Knie fast gestreckt ist.',
      comeBackSlowly,
    ],
  },
  'knee-extension-band': {
    name: 'Knie gegen ein Band strecken',
    steps: [
      'Binden Sie das Band an das hintere Stuhlbein.',
      putTheLoopRoundYourAnkle,
      'Strecken Sie das Knie.',
      comeBackSlowly,
    ],
  },
  'knee-bend-standing': {
    name: 'Knie beugen im Stehen',
    steps: [holdOnToAFirmSupport, bendOneKneeAndBring, stopWhenTheShinIsLevel, lowerSlowly],
  },
  'knee-bend-standing-one-kilo': {
    name: 'Knie beugen im Stehen, 1 kg am Fußgelenk',
    steps: [
      putTheWeightOnYourAnkle,
      holdOnToAFirmSupport,
      bendOneKneeAndBring,
      stopWhenTheShinIsLevel,
      lowerSlowly,
    ],
  },
  'knee-bend-band': {
    name: 'Knie gegen ein Band beugen, im Sitzen',
    steps: [
      tieTheBandToSomethingFirm,
      putTheLoopRoundYourAnkle,
      'Ziehen Sie die Ferse nach hinten unter den Stuhl.',
      comeBackSlowly,
    ],
  },
  'hip-hinge-stick': {
    name: 'Aus der Hüfte vorbeugen, mit Stab am Rücken',
    steps: [
      'Halten Sie einen Stab längs am Rücken.',
      'Kopf, Rücken und Becken bleiben am Stab.',
      'Beugen Sie sich aus der Hüfte vor.',
      standUpAgain,
    ],
  },
  'hip-hinge-weights': {
    name: 'Aus der Hüfte vorbeugen, mit Hanteln',
    steps: [
      'Halten Sie in jeder Hand ein Gewicht.',
      'Halten Sie den Rücken gerade und beugen Sie sich aus der Hüfte vor.',
      'Lassen Sie die Gewichte an den Oberschenkeln nach unten gleiten.',
      standUpAgain,
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'thigh'>, ExerciseSentences>>;
