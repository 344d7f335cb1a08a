/** Steps that exercises of more than one region share, in German. */
import type { Sentences } from '../translator.ts';

export const sharedSteps: Sentences = {
  'Sit tall.': 'Sitzen Sie aufrecht.',
  'Lower slowly.': 'Langsam wieder absenken.',
  'Come back slowly.': 'Gehen Sie langsam zurück.',
  'Let go.': 'Lassen Sie locker.',
  'Hold for five slow counts. Keep breathing.':
    'Halten Sie und zählen Sie langsam bis fünf. Atmen Sie weiter.',
  'Hold it with both hands.': 'Halten Sie es mit beiden Händen.',
  'Tie the band to something firm in front of you.': 'Binden Sie das Band vor sich an etwas Festes.',
  'Lie on your back. Bend your knees.': 'Legen Sie sich auf den Rücken. Beugen Sie die Knie.',
  'Hold one end in each hand.': 'Halten Sie in jeder Hand ein Ende.',
  'Tie the band to something firm above you.': 'Binden Sie das Band über sich an etwas Festes.',
  'Bend your elbow.': 'Beugen Sie den Ellbogen.',
};
