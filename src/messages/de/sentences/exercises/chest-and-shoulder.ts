import type { ExerciseId } from '#core/exercises/ids.ts';
import type { ExerciseSentences } from '#messages/sentence.ts';
import { bendYourElbow, comeBackSlowly, holdAndBreathe, letGo, lowerSlowly } from './exercise-steps.ts';

const standAtArmsLength = 'Stellen Sie sich eine Armlänge vor die Wand.';
const putYourHandsOnTheWall = 'Legen Sie die Hände in Schulterhöhe an die Wand.';
const bendYourElbows = 'Beugen Sie die Ellbogen, dann drücken Sie sich weg.';
const putYourHandsOnAFixedSupport =
  'Stützen Sie die Hände auf etwas Festes. Prüfen Sie, dass es nicht wegrutschen kann.';
const walkYourFeetBack = 'Gehen Sie mit den Füßen zurück, bis der Körper gerade ist.';
const bendYourElbowsAndComeDown = 'Beugen Sie die Ellbogen und gehen Sie nach unten.';
const pushBackUp = 'Drücken Sie sich wieder hoch.';
const putYourHandsOnTheFloor = 'Stützen Sie die Hände unter den Schultern auf den Boden.';
const comeDownSlowly = 'Senken Sie die Hände langsam wieder.';
const letYourArmHang = 'Lassen Sie den Arm hängen.';

export const chestAndShoulder = {
  'wall-push-up-near': {
    name: 'Liegestütz an der Wand, Füße nah',
    steps: [
      standAtArmsLength,
      'Gehen Sie gut eine halbe Fußlänge zurück.',
      putYourHandsOnTheWall,
      bendYourElbows,
    ],
  },
  'wall-push-up': {
    name: 'Liegestütz an der Wand',
    steps: [standAtArmsLength, 'Gehen Sie eine Fußlänge zurück.', putYourHandsOnTheWall, bendYourElbows],
  },
  'incline-push-up-high': {
    name: 'Liegestütz, Hände in 90 cm Höhe',
    steps: [putYourHandsOnAFixedSupport, walkYourFeetBack, bendYourElbowsAndComeDown, pushBackUp],
  },
  'incline-push-up-table': {
    name: 'Liegestütz, Hände in 75 cm Höhe',
    steps: [putYourHandsOnAFixedSupport, walkYourFeetBack, bendYourElbowsAndComeDown, pushBackUp],
  },
  'incline-push-up-middle': {
    name: 'Liegestütz, Hände in 60 cm Höhe',
    steps: [putYourHandsOnAFixedSupport, walkYourFeetBack, bendYourElbowsAndComeDown, pushBackUp],
  },
  'incline-push-up-low': {
    name: 'Liegestütz, Hände in 45 cm Höhe',
    steps: [putYourHandsOnAFixedSupport, walkYourFeetBack, bendYourElbowsAndComeDown, pushBackUp],
  },
  'incline-push-up-step': {
    name: 'Liegestütz, Hände in 30 cm Höhe',
    steps: [putYourHandsOnAFixedSupport, walkYourFeetBack, bendYourElbowsAndComeDown, pushBackUp],
  },
  'knee-push-up': {
    name: 'Liegestütz auf den Knien',
    steps: [
      'Knien Sie auf einer weichen Matte. Stützen Sie die Hände auf den Boden.',
      'Der Körper bleibt gerade, vom Knie bis zur Schulter.',
      bendYourElbowsAndComeDown,
      pushBackUp,
    ],
  },
  'push-up': {
    name: 'Liegestütz am Boden',
    steps: [
      putYourHandsOnTheFloor,
      'Der Körper bleibt gerade, von der Ferse bis zur Schulter.',
      bendYourElbowsAndComeDown,
      pushBackUp,
    ],
  },
  'push-up-feet-raised': {
    name: 'Liegestütz, Füße in 30 cm Höhe',
    steps: [
      'Stellen Sie die Füße auf eine feste Stufe.',
      putYourHandsOnTheFloor,
      bendYourElbowsAndComeDown,
      pushBackUp,
    ],
  },
  'chest-press-band': {
    name: 'Brustdrücken mit Band im Sitzen',
    steps: [
      'Legen Sie das Band um die Stuhllehne.',
      'Halten Sie in jeder Hand ein Ende an der Brust.',
      'Drücken Sie beide Hände nach vorn.',
      comeBackSlowly,
    ],
  },
  'chest-press-lying': {
    name: 'Brustdrücken mit Hanteln in Rückenlage',
    steps: [
      'Legen Sie sich auf den Rücken. Halten Sie die Gewichte über der Brust.',
      'Beugen Sie die Ellbogen und senken Sie die Gewichte.',
      'Drücken Sie wieder nach oben.',
    ],
  },
  'overhead-press-band': {
    name: 'Band über den Kopf drücken, im Sitzen',
    steps: [
      'Setzen Sie sich auf das Band. Halten Sie in jeder Hand ein Ende.',
      'Drücken Sie die Hände nach oben.',
      'Nur so weit, wie die Schulter es zulässt.',
      comeDownSlowly,
    ],
  },
  'overhead-press-weights': {
    name: 'Hanteln über den Kopf drücken, im Sitzen',
    steps: [
      'Sitzen Sie aufrecht. Halten Sie die Gewichte an den Schultern.',
      'Drücken Sie sie nach oben.',
      comeDownSlowly,
    ],
  },
  'front-arm-raise-bent': {
    name: 'Gebeugten Arm nach vorn heben',
    steps: [bendYourElbow, 'Heben Sie den Oberarm nach vorn, bis er waagerecht ist.', lowerSlowly],
  },
  'front-arm-raise-straight': {
    name: 'Gestreckten Arm nach vorn heben',
    steps: [letYourArmHang, 'Heben Sie ihn gestreckt nach vorn, bis er waagerecht ist.', lowerSlowly],
  },
  'side-arm-raise-bent': {
    name: 'Gebeugten Arm zur Seite heben',
    steps: [bendYourElbow, 'Heben Sie den Oberarm zur Seite, bis er waagerecht ist.', lowerSlowly],
  },
  'side-arm-raise-straight': {
    name: 'Gestreckten Arm zur Seite heben',
    steps: [letYourArmHang, 'Heben Sie ihn gestreckt zur Seite, bis er waagerecht ist.', lowerSlowly],
  },
  'arm-turn-out-hold': {
    name: 'Handrücken gegen einen Türrahmen drücken',
    steps: [
      'Stellen Sie sich neben einen Türrahmen. Beugen Sie den Ellbogen, er bleibt am Körper.',
      'Drücken Sie den Handrücken gegen den Rahmen.',
      holdAndBreathe,
      letGo,
    ],
  },
  'arm-turn-out-band': {
    name: 'Arm gegen ein Band nach außen drehen',
    steps: [
      'Der Ellbogen bleibt gebeugt am Körper.',
      'Halten Sie das Band mit der Hand vor dem Bauch.',
      'Drehen Sie den Unterarm nach außen.',
      comeBackSlowly,
    ],
  },
} as const satisfies Readonly<Record<ExerciseId<'chest-and-shoulder'>, ExerciseSentences>>;
