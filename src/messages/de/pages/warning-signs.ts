import type { words as english } from '#messages/en/pages/warning-signs.ts';
import type { Same } from '#messages/sentence.ts';

/** In German. Warning signs. All of them are the clinic’s to approve before use. */
export const words = {
  'flag.chest-pain': 'Schmerz oder Druck in der Brust',
  'flag.breathlessness': 'Sie bekommen viel schlechter Luft, als es bei dieser Anstrengung üblich ist',
  'flag.fainting': 'Sie sind ohnmächtig geworden oder fast',
  'flag.face-speech-or-one-sided-weakness':
    'Das Gesicht hängt auf einer Seite, Sie sprechen undeutlich, oder eine Körperhälfte ist schwach oder taub',
  'flag.severe-headache-or-vision':
    'Plötzlich starke Kopfschmerzen, oder Sie sehen plötzlich anders oder schlechter',
  'flag.saddle-or-bladder-change': 'Taub zwischen den Beinen, oder neue Probleme mit Blase oder Darm',
  'flag.hot-swollen-joint':
    'Ein Gelenk ist plötzlich viel heißer und stärker geschwollen als in Ihren Schüben, oder Sie fühlen sich dabei krank',
  'flag.calf-pain-swelling':
    'Eine Wade ist seit Kurzem geschwollen, heiß oder druckempfindlich, und es ist nicht Ihr üblicher Muskelkater',
  'flag.dark-urine': 'Dunkelbrauner Urin oder ungewöhnlich starke Muskelschmerzen',
  'flag.unexplained-fever': 'Fieber oder Schüttelfrost, und Sie wissen nicht warum',
  'flag.cannot-bear-weight-or-deformity': 'Sie können es nicht belasten, oder es sieht verformt aus',
  'flag.persistent-limb-change-after-release':
    'Zehn Minuten nach dem Abnehmen der Manschette: Taubheit oder Kribbeln, oder noch blass, grau, bläulich oder geschwollen',
  'flag.neck-pain-with-limb-symptoms':
    'Nackenschmerzen, und Arme oder Beine sind taub, schwach oder ungeschickt',
  'flag.new-weakness': 'Neue Schwäche in einem Arm oder Bein',
  'flag.fall-with-injury': 'Ein Sturz, bei dem Sie sich verletzt haben',
  'flag.locked-joint': 'Ein Gelenk, das festsitzt und sich nicht bewegt',

  'family.heart': 'Brustschmerz, Ohnmacht oder viel schlechtere Luft als sonst',
  'family.stroke': 'Hängendes Gesicht, undeutliche Sprache oder eine Seite schwach oder taub',
  'family.head': 'Plötzlich starke Kopfschmerzen oder verändertes Sehen',
  'family.nerves':
    'Arm oder Bein neu schwach, taub oder ungeschickt, auch mit Nackenschmerz; taub zwischen den Beinen; Probleme mit Blase oder Darm',
  'family.joint': 'Ein Gelenk ist plötzlich heiß und geschwollen, klemmt, ist verformt oder trägt Sie nicht',
  'family.calf': 'Eine Wade ist neu geschwollen, heiß oder druckempfindlich',
  'family.muscle': 'Dunkelbrauner Urin oder sehr starke Muskelschmerzen',
  'family.fever': 'Fieber oder Schüttelfrost ohne bekannten Grund',
  'family.fall': 'Ein Sturz, bei dem Sie sich verletzt haben',
  'family.cuff': 'Zehn Minuten nach der Manschette noch taub, blass, bläulich oder geschwollen',
} as const satisfies Same<typeof english>;
