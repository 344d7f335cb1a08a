import type { words as english } from '#messages/en/pages/dose.ts';
import type { Same } from '#messages/sentence.ts';

/** An exercise and its dose, in German. */
export const words = {
  'dose.sets': { by: 'sets', one: '1 Satz mit {low} bis {high}', other: '{sets} Sätze mit {low} bis {high}' },
  'dose.sets-same': { by: 'sets', one: '1 Satz mit {low}', other: '{sets} Sätze mit {low}' },
  'dose.scheme': '{sets} Sätze: {scheme}',
  'dose.load': 'mit {weight}',
  'dose.no-load': 'ohne Gewicht',
  'dose.added': 'mit {weight} zusätzlich',
  'dose.rest': '{seconds}\u00a0Sekunden Pause zwischen den Sätzen',
  'dose.weekly': 'Tage in der Woche: {count}',
  'dose.left': 'linke Seite',
  'dose.right': 'rechte Seite',
  'dose.both': 'beide Seiten',
  'dose.cuff': 'Manschette auf {mmhg}\u00a0mmHg',
  'dose.wrap': 'elastische Binde, Festigkeit {tightness} von 10',
  'dose.pulse': 'Den Puls fühlen, wie gezeigt',
  'cuff.supervised': 'Nur mit einer Physiotherapeutin oder einem Physiotherapeuten neben Ihnen, nie allein',
  'dose.signed': 'Festgelegt von {name}.',
} as const satisfies Same<typeof english>;
