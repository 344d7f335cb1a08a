import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import { holdAndBreathe, holdOnToAFirmSupport, letGo, lowerSlowly } from './exercise-steps.ts';

const liftTheLegToTheHeight = 'Heben Sie das gestreckte Bein bis zur Höhe des gebeugten Knies.';
const keepYourBodyUpright = 'Der Oberkörper bleibt aufrecht.';
const lieOnYourSide = 'Legen Sie sich auf die Seite. Beugen Sie beide Knie.';
const keepYourHipsDown = 'Das Becken bleibt unten.';
const liftTheTopKnee = 'Heben Sie das obere Knie.';

export const legRaises = {
  'front-leg-raise-standing': {
    name: 'Gestrecktes Bein nach vorn heben, im Stehen, 30°',
    steps: [
      holdOnToAFirmSupport,
      'Das Knie bleibt gestreckt.',
      'Heben Sie das Bein ein wenig nach vorn.',
      lowerSlowly,
    ],
  },
  'march-standing': {
    name: 'Gebeugtes Knie heben, im Stehen',
    steps: [holdOnToAFirmSupport, 'Heben Sie ein Knie, bis der Oberschenkel waagerecht ist.', lowerSlowly],
  },
  'straight-leg-raise': {
    name: 'Gestrecktes Bein heben in Rückenlage',
    steps: [
      'Legen Sie sich auf den Rücken. Beugen Sie ein Knie.',
      'Das andere Knie bleibt gestreckt.',
      liftTheLegToTheHeight,
      lowerSlowly,
    ],
  },
  'straight-leg-raise-one-kilo': {
    name: 'Gestrecktes Bein heben in Rückenlage, 1 kg am Fußgelenk',
    steps: [
      'Legen Sie das Gewicht am Fußgelenk an. Legen Sie sich auf den Rücken.',
      'Beugen Sie das andere Knie. Das Bein mit dem Gewicht bleibt gestreckt.',
      liftTheLegToTheHeight,
      lowerSlowly,
    ],
  },
  'side-leg-raise-standing': {
    name: 'Gestrecktes Bein zur Seite heben, im Stehen, 30°',
    steps: [holdOnToAFirmSupport, keepYourBodyUpright, 'Heben Sie ein Bein zur Seite.', lowerSlowly],
  },
  'side-lying-hip-abduction-bent': {
    name: 'Bein mit gebeugtem Knie heben, in Seitenlage',
    steps: [
      lieOnYourSide,
      'Heben Sie das obere Bein. Das Knie bleibt gebeugt.',
      'Das Becken bleibt ruhig.',
      lowerSlowly,
    ],
  },
  'side-lying-hip-abduction': {
    name: 'Bein heben in Seitenlage',
    steps: [
      'Legen Sie sich auf die Seite. Beugen Sie das untere Bein.',
      'Das obere Bein bleibt gestreckt, in einer Linie mit dem Körper.',
      'Heben Sie das obere Bein.',
      lowerSlowly,
    ],
  },
  'rear-leg-raise-standing': {
    name: 'Gestrecktes Bein nach hinten heben, im Stehen, 20°',
    steps: [
      holdOnToAFirmSupport,
      keepYourBodyUpright,
      'Führen Sie ein Bein gerade nach hinten.',
      'Holen Sie es langsam zurück.',
    ],
  },
  'rear-leg-raise-bent': {
    name: 'Bein mit gebeugtem Knie heben, in Bauchlage',
    steps: [
      'Legen Sie sich auf den Bauch. Beugen Sie ein Knie.',
      'Heben Sie diesen Oberschenkel ein wenig vom Boden.',
      keepYourHipsDown,
      lowerSlowly,
    ],
  },
  'rear-leg-raise-straight': {
    name: 'Gestrecktes Bein heben in Bauchlage',
    steps: [
      'Legen Sie sich auf den Bauch. Beide Beine bleiben gestreckt.',
      'Heben Sie ein Bein ein wenig vom Boden.',
      keepYourHipsDown,
      lowerSlowly,
    ],
  },
  'pillow-squeeze': {
    name: 'Ein Kissen zwischen den Knien drücken',
    steps: [
      'Legen Sie ein Kissen zwischen die Knie.',
      'Drücken Sie die Knie zusammen.',
      holdAndBreathe,
      letGo,
    ],
  },
  'inner-leg-raise': {
    name: 'Unteres Bein heben in Seitenlage',
    steps: [
      'Legen Sie sich auf die Seite. Beugen Sie das obere Bein und legen Sie es nach vorn.',
      'Das untere Bein bleibt gestreckt.',
      'Heben Sie das untere Bein.',
      lowerSlowly,
    ],
  },
  clam: {
    name: 'Knie öffnen in Seitenlage',
    steps: [lieOnYourSide, 'Die Füße bleiben zusammen.', liftTheTopKnee, lowerSlowly],
  },
  'clam-band': {
    name: 'Knie gegen ein Band öffnen, in Seitenlage',
    steps: [
      'Legen Sie ein Band um beide Oberschenkel. Legen Sie sich auf die Seite.',
      'Beugen Sie beide Knie. Die Füße bleiben zusammen.',
      liftTheTopKnee,
      lowerSlowly,
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'leg-raises'>, ExerciseSentences>>;
