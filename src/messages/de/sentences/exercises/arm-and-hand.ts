import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import {
  bendYourElbow,
  comeBackSlowly,
  holdForThreeSlowCounts,
  holdItWithBothHands,
  letGo,
  lowerSlowly,
  tieTheBandToSomethingFirmAbove,
} from './exercise-steps.ts';

const sitTallWithTheWeight = 'Sitzen Sie aufrecht. Lassen Sie den Arm mit dem Gewicht hängen.';
const bendYourElbowAndLift = 'Beugen Sie den Ellbogen und heben Sie das Gewicht.';
const sitTallElbowUp = 'Sitzen Sie aufrecht. Der Ellbogen zeigt zur Decke.';
const letTheHandComeDown = 'Lassen Sie die Hand hinter dem Kopf herunter.';
const straightenYourElbow = 'Strecken Sie den Ellbogen.';
const letTheHandWithTheWeight = 'Lassen Sie die Hand mit dem Gewicht über die Kante hängen.';

export const armAndHand = {
  'curl-seated': {
    name: 'Ellbogen beugen im Sitzen',
    steps: [sitTallWithTheWeight, bendYourElbowAndLift, lowerSlowly],
  },
  'curl-seated-one-kilo': {
    name: 'Ellbogen beugen im Sitzen, 1 kg in der Hand',
    steps: [sitTallWithTheWeight, bendYourElbowAndLift, lowerSlowly],
  },
  'curl-seated-two-kilos': {
    name: 'Ellbogen beugen im Sitzen, 2 kg in der Hand',
    steps: [sitTallWithTheWeight, bendYourElbowAndLift, lowerSlowly],
  },
  'overhead-extension': {
    name: 'Ellbogen über dem Kopf strecken',
    steps: [sitTallElbowUp, letTheHandComeDown, straightenYourElbow, lowerSlowly],
  },
  'overhead-extension-one-kilo': {
    name: 'Ellbogen über dem Kopf strecken, 1 kg in der Hand',
    steps: [sitTallElbowUp, letTheHandComeDown, straightenYourElbow, lowerSlowly],
  },
  'curl-band': {
    name: 'Ellbogen gegen ein Band beugen',
    steps: [
      'Stellen Sie den Fuß auf das Band.',
      'Halten Sie das Ende in der Hand.',
      bendYourElbow,
      lowerSlowly,
    ],
  },
  'press-down-band': {
    name: 'Band nach unten drücken',
    steps: [
      tieTheBandToSomethingFirmAbove,
      'Der Ellbogen bleibt am Körper.',
      'Drücken Sie die Hand nach unten, bis der Arm gestreckt ist.',
      comeBackSlowly,
    ],
  },
  'wrist-bend-up': {
    name: 'Handgelenk beugen, Handfläche nach oben',
    steps: [
      'Legen Sie den Unterarm auf einen Tisch, Handfläche nach oben.',
      letTheHandWithTheWeight,
      'Beugen Sie das Handgelenk nach oben.',
      lowerSlowly,
    ],
  },
  'wrist-bend-back': {
    name: 'Handrücken heben, Handfläche nach unten',
    steps: [
      'Legen Sie den Unterarm auf einen Tisch, Handfläche nach unten.',
      letTheHandWithTheWeight,
      'Heben Sie den Handrücken.',
      lowerSlowly,
    ],
  },
  'ball-squeeze': {
    name: 'Einen weichen Ball drücken',
    steps: [
      'Nehmen Sie einen weichen Ball in die Hand.',
      'Drücken Sie ihn, so weit es angenehm ist.',
      holdForThreeSlowCounts,
      letGo,
    ],
  },
  'towel-wring': {
    name: 'Ein Handtuch wringen',
    steps: [
      'Rollen Sie ein Handtuch zusammen.',
      holdItWithBothHands,
      'Wringen Sie es langsam in die eine Richtung, dann in die andere.',
    ],
  },
  'finger-spread': {
    name: 'Finger gegen einen Gummiring spreizen',
    steps: [
      'Legen Sie den Ring um Finger und Daumen.',
      'Spreizen Sie die Finger.',
      'Schließen Sie sie langsam.',
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'arm-and-hand'>, ExerciseSentences>>;
