import type { words as english } from '#messages/en/pages/access-log.ts';
import type { Same } from '#messages/sentence.ts';

/** Who opened the record, in German. */
export const words = {
  'opened.text':
    'Alle aus Ihrer Praxis, die Ihre Akte angesehen oder etwas eingetragen haben. Das Neueste zuerst.',
  'opened.none': 'Noch hat niemand Ihre Akte geöffnet.',
  'opened.unknown': 'Jemand, der nicht mehr auf der Liste der Praxis steht, oder das Programm selbst',
  'opened.looked': { by: 'count', one: 'Einmal angesehen', other: '{count}-mal angesehen' },
  'opened.wrote': { by: 'count', one: 'einmal eingetragen', other: '{count}-mal eingetragen' },
  'opened.wrote-only': { by: 'count', one: 'Einmal eingetragen', other: '{count}-mal eingetragen' },
  'opened.with-reason': 'Von außerhalb Ihres Teams, mit schriftlichem Grund',
  'opened.handed-on': 'Hat Ihre Akte mit Ihrer Zustimmung als Datei weitergegeben an',
  'opened.own-copy': 'Meine Akte als PDF',
  'opened.own-copy-csv': 'Meine Akte als Tabellen (CSV, in einer ZIP-Datei)',
  'opened.own-copy-fhir': 'Meine Akte für das Programm einer anderen Praxis (FHIR)',
  'opened.own-copy-calendar': 'Meine nächsten Tage für einen Kalender',
  'opened.own-copy-calendar-hint':
    'Was in den nächsten acht Wochen geplant ist. Ändert sich Ihr Plan, ändert sich diese Datei nicht: Holen Sie sich dann eine neue.',
  'opened.own-copy-unlocked': 'Diese Dateien sind nicht gesperrt. Wer sie hat, kann sie lesen.',
  'opened.own-copy-hint': 'Für Sie zum Aufheben oder Ausdrucken. Sie müssen niemanden darum bitten.',
  'opened.ask': 'Ist ein Name falsch? Rufen Sie Ihre Praxis an und fragen Sie.',
} as const satisfies Same<typeof english>;
