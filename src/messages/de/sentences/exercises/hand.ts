/** The hand with putty, a ring and small weights, and held without movement. */
import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import { holdAndBreathe, letGo, lowerSlowly } from './exercise-steps.ts';

const keepTheThumbRound = 'Halten Sie den Daumen rund und die Spitze gebeugt.';
const letGoSlowly = 'Lassen Sie langsam locker.';
const restYourForearm = 'Legen Sie den Unterarm auf einen Tisch, der Daumen zeigt nach oben.';

export const hand = {
  'putty-squeeze': {
    name: 'Knete mit der ganzen Hand drücken',
    steps: [
      'Legen Sie die Knete in die Handfläche.',
      'Schließen Sie die ganze Hand darum.',
      letGo,
      'Formen Sie die Knete wieder rund.',
    ],
  },
  'putty-hook': {
    name: 'Fingerspitzen in die Knete haken',
    steps: [
      'Legen Sie eine Rolle Knete quer in die Handfläche.',
      'Die Fingergrundgelenke bleiben gestreckt.',
      'Beugen Sie nur die Fingerspitzen in die Knete.',
      letGo,
    ],
  },
  'putty-tip-pinch': {
    name: 'Knete zwischen Daumen und Fingerspitze drücken',
    steps: [
      keepTheThumbRound,
      'Drücken Sie die Knete zwischen Daumen und Fingerspitze.',
      letGo,
      'Machen Sie auf der Rolle ein Stück weiter.',
    ],
  },
  'putty-key-pinch': {
    name: 'Knete seitlich an den Finger drücken',
    steps: [
      'Legen Sie die Knete seitlich auf den Zeigefinger.',
      keepTheThumbRound,
      'Drücken Sie mit dem Daumen darauf, als drehten Sie einen Schlüssel um.',
      letGo,
    ],
  },
  'putty-finger-spread': {
    name: 'Finger in einem Ring aus Knete spreizen',
    steps: [
      'Legen Sie einen Ring aus Knete um Finger und Daumen.',
      'Spreizen Sie die Finger.',
      'Schließen Sie sie langsam.',
    ],
  },
  'thumb-out-ring': {
    name: 'Daumen gegen einen Gummiring abspreizen',
    steps: [
      'Legen Sie den Ring um Daumen und Handfläche.',
      'Spreizen Sie den Daumen von der Hand ab.',
      'Lassen Sie ihn langsam zurückkommen.',
    ],
  },
  'finger-straighten-ring': {
    name: 'Finger gegen einen Gummiring strecken',
    steps: [
      'Beugen Sie die Finger und legen Sie den Ring um Finger und Daumen.',
      'Strecken Sie die Finger.',
      'Beugen Sie sie langsam.',
    ],
  },
  'wrist-thumb-side-lift': {
    name: 'Hand zur Daumenseite heben, mit Gewicht',
    steps: [
      restYourForearm,
      'Lassen Sie die Hand mit dem Gewicht über die Kante hängen.',
      'Heben Sie die Daumenseite der Hand.',
      lowerSlowly,
    ],
  },
  'palm-turn': {
    name: 'Handfläche nach oben und unten drehen, mit Gewicht',
    steps: [
      restYourForearm,
      'Halten Sie das Gewicht in der Hand.',
      'Drehen Sie die Handfläche langsam nach oben, dann nach unten.',
    ],
  },
  'thumb-out-hold': {
    name: 'Daumen nach außen gegen die andere Hand drücken',
    steps: [
      'Legen Sie die andere Hand außen an den Daumen.',
      'Drücken Sie den Daumen nach außen. Nichts bewegt sich.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
  'index-side-hold': {
    name: 'Zeigefinger zur Daumenseite drücken',
    steps: [
      'Legen Sie die Hand flach hin.',
      'Legen Sie die andere Hand an die Daumenseite des Zeigefingers.',
      'Drücken Sie den Zeigefinger zu dieser Seite. Nichts bewegt sich.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
  'tip-pinch-hold': {
    name: 'Ein rundes O formen und die Spitzen aneinanderdrücken',
    steps: [
      'Formen Sie mit Daumen und Zeigefinger ein rundes O.',
      'Drücken Sie die Spitzen leicht aneinander.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
  'towel-grip-hold': {
    name: 'Ein gerolltes Handtuch fest halten',
    steps: [
      'Nehmen Sie ein gerolltes Handtuch in die Hand.',
      'Schließen Sie die Hand darum.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
  'palm-press-hold': {
    name: 'Handfläche auf den Tisch drücken',
    steps: [
      'Legen Sie Unterarm und Hand auf einen Tisch, Handfläche nach unten.',
      'Drücken Sie die Handfläche nach unten. Nichts bewegt sich.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
  'back-of-hand-press-hold': {
    name: 'Handrücken von unten gegen den Tisch drücken',
    steps: [
      'Legen Sie die Hand unter einen schweren Tisch, Handfläche nach unten.',
      'Drücken Sie den Handrücken nach oben. Nichts bewegt sich.',
      holdAndBreathe,
      letGoSlowly,
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'hand'>, ExerciseSentences>>;
