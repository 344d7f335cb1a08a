import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import {
  holdAndBreathe,
  holdForThreeSlowCounts,
  letGo,
  lieOnYourBack,
  lowerSlowly,
} from './exercise-steps.ts';

const comeBackAndChangeSides = 'Kommen Sie zurück und wechseln Sie die Seite.';
const lieOnYourFront = 'Legen Sie sich auf den Bauch. Stützen Sie sich auf die Unterarme.';
const holdAStraightLine = 'Der Körper bleibt in einer geraden Linie. Atmen Sie weiter.';
const pressGently = 'Drücken Sie leicht. Der Kopf bewegt sich dabei nicht.';

export const trunkAndNeck = {
  'belly-press': {
    name: 'Unteren Rücken nach unten drücken, in Rückenlage',
    steps: [
      lieOnYourBack,
      'Ziehen Sie den Bauch ein und drücken Sie den unteren Rücken nach unten.',
      holdAndBreathe,
      letGo,
    ],
  },
  'heel-slide': {
    name: 'Eine Ferse vorschieben, der Rücken bleibt ruhig',
    steps: [
      lieOnYourBack,
      'Ziehen Sie den Bauch ein.',
      'Schieben Sie eine Ferse vor und wieder zurück.',
      'Wechseln Sie das Bein. Der Rücken bleibt ruhig.',
    ],
  },
  'arm-and-leg-lowering': {
    name: 'Arm und Bein der anderen Seite senken, in Rückenlage',
    steps: [
      'Legen Sie sich auf den Rücken. Heben Sie beide Arme und beide gebeugten Knie.',
      'Senken Sie einen Arm und das Bein der anderen Seite.',
      comeBackAndChangeSides,
      'Der Rücken bleibt ruhig.',
    ],
  },
  'forearm-plank-knees': {
    name: 'Unterarmstütz auf den Knien',
    steps: [lieOnYourFront, 'Heben Sie das Becken. Die Knie bleiben unten.', holdAStraightLine, lowerSlowly],
  },
  'forearm-plank': {
    name: 'Unterarmstütz auf den Füßen',
    steps: [lieOnYourFront, 'Heben Sie Becken und Knie.', holdAStraightLine, lowerSlowly],
  },
  'arm-and-leg-reach': {
    name: 'Auf allen vieren Arm und Bein der anderen Seite strecken',
    steps: [
      'Gehen Sie auf Hände und Knie.',
      'Strecken Sie einen Arm und das Bein der anderen Seite aus.',
      'Der Rücken bleibt waagerecht.',
      comeBackAndChangeSides,
    ],
  },
  'chest-lift': {
    name: 'Brust heben in Bauchlage',
    steps: [
      'Legen Sie sich auf den Bauch. Legen Sie die Arme neben den Körper.',
      'Heben Sie die Brust ein wenig. Schauen Sie auf den Boden.',
      lowerSlowly,
    ],
  },
  'side-plank-knees': {
    name: 'Seitstütz auf den Knien',
    steps: [
      'Legen Sie sich auf die Seite. Beugen Sie die Knie.',
      'Stützen Sie sich auf den Unterarm.',
      'Heben Sie das Becken und bleiben Sie so. Atmen Sie weiter.',
      lowerSlowly,
    ],
  },
  'chin-draw': {
    name: 'Kinn zurückziehen',
    steps: [
      'Sitzen Sie aufrecht. Schauen Sie geradeaus.',
      'Ziehen Sie das Kinn gerade nach hinten.',
      holdForThreeSlowCounts,
      letGo,
    ],
  },
  'neck-press-front': {
    name: 'Stirn in die Hände drücken',
    steps: ['Legen Sie beide Hände an die Stirn.', pressGently, holdAndBreathe, letGo],
  },
  'neck-press-side': {
    name: 'Kopf seitlich in die Hand drücken',
    steps: [
      'Legen Sie eine Hand seitlich an den Kopf.',
      pressGently,
      holdAndBreathe,
      'Lassen Sie locker. Dann kommt die andere Seite.',
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'trunk-and-neck'>, ExerciseSentences>>;
