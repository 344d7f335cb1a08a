import type { ownPageWords } from '#messages/en/pages/own-page.ts';

/** A page open twice, weights and lengths of time, in German. */
export const ownPageGerman = {
  'skip.main': 'Zum Inhalt',
  'skip.pages': 'Seiten',
  'elsewhere.title': 'Diese Seite ist in einem anderen Fenster offen',
  'elsewhere.text': 'Machen Sie dort weiter oder hier. Geschrieben wird immer nur in einem Fenster.',
  'elsewhere.take-over': 'Hier weitermachen',
  'weight.kg': '{number}\u00a0kg',
  'weight.lb': '{number}\u00a0lb',
  'length.second': '{count}\u00a0Sekunde',
  'length.seconds': '{count}\u00a0Sekunden',
  'length.minute': '{count}\u00a0Minute',
  'length.minutes': '{count}\u00a0Minuten',
} as const satisfies Readonly<Record<keyof typeof ownPageWords, string>>;
