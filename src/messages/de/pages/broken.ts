import type { words as english } from '#messages/en/pages/broken.ts';
import type { Same } from '#messages/sentence.ts';

/** In German. Pages that are not there or went wrong. Apart from the rest: every page of the product carries these few. */
export const words = {
  'lost.title': 'Hier ist keine Seite',
  'lost.text': 'Die Adresse ist vielleicht alt oder vertippt.',
  'lost.home': 'Zum Anfang',
  'broken.title': 'Etwas ist schiefgegangen',
  'broken.text':
    'Was Sie eingegeben haben, ist gespeichert. Versuchen Sie es noch einmal. Bleibt es so, rufen Sie die Praxis an.',
  'broken.again': 'Noch einmal',
} as const satisfies Same<typeof english>;
