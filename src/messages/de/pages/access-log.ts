import type { words as english } from '#messages/en/pages/access-log.ts';
import type { Same } from '#messages/sentence.ts';

/** Who opened the record, in German. */
export const words = {
  'opened.text':
    'Alle aus Ihrer Praxis, die Ihre Akte angesehen oder etwas eingetragen haben. Das Neueste zuerst.',
  'opened.none': 'Noch hat niemand Ihre Akte geöffnet.',
  'opened.unknown': 'Jemand, der nicht mehr auf der Liste der Praxis steht, oder das Programm selbst',
  'opened.program': 'Programm: {name}',
  'opened.looked': { by: 'count', one: 'Einmal angesehen', other: '{count}-mal angesehen' },
  'opened.wrote': { by: 'count', one: 'einmal eingetragen', other: '{count}-mal eingetragen' },
  'opened.wrote-only': { by: 'count', one: 'Einmal eingetragen', other: '{count}-mal eingetragen' },
  'opened.with-reason': 'Von außerhalb Ihres Teams, mit schriftlichem Grund',
  'opened.handed-on': 'Hat Ihre Akte mit Ihrer Zustimmung als Datei weitergegeben an',
  'opened.own-copy': 'Meine Akte als PDF',
  'opened.own-copy-csv': 'Meine Akte als Tabellen (CSV, in einer ZIP-Datei)',
  'opened.own-copy-fhir': 'Meine Akte für das Programm einer anderen Praxis (FHIR)',
  'opened.own-copy-json': 'Meine Akte mit jeder Zeile, wie die Praxis sie führt (JSON)',
  'opened.own-copy-calendar': 'Meine nächsten Tage für einen Kalender',
  'opened.own-copy-calendar-hint':
    'Was in den nächsten acht Wochen geplant ist. Ändert sich Ihr Plan, ändert sich diese Datei nicht: Holen Sie sich dann eine neue.',
  'opened.own-copy-unlocked': 'Diese Dateien sind nicht gesperrt. Wer sie hat, kann sie lesen.',
  'opened.own-copy-hint': 'Für Sie zum Aufheben oder Ausdrucken. Sie müssen niemanden darum bitten.',
  'opened.ask': 'Ist ein Name falsch? Rufen Sie Ihre Praxis an und fragen Sie.',
  'opened.feed': 'Der Kalender, der Ihre private Adresse liest',
  'opened.feed-title': 'Die nächsten Tage im eigenen Kalender',
  'opened.feed-what':
    'Mit einer privaten Adresse holt sich Ihr Kalenderprogramm die nächsten Tage selbst und folgt Ihrem Plan, wenn er sich ändert. Darin steht nicht mehr als in der Kalenderdatei: dass es Übungen und Fragen gibt, ein Termin und sein Ort. Nichts über Ihre Gesundheit.',
  'opened.feed-who':
    'Wer die Adresse hat, kann ohne PIN mitlesen, auch die Firma, die den Kalender betreibt. Geben Sie sie niemandem. Sie können sie hier jederzeit beenden; was ein Kalender schon geholt hat, bleibt dort.',
  'opened.feed-made': 'Adresse erstellt {when}',
  'opened.feed-read': 'Zuletzt von einem Kalender gelesen etwa {when}',
  'opened.feed-never-read': 'Noch kein Kalender hat sie gelesen',
  'opened.feed-ended-patient': 'Sie haben sie beendet: {when}.',
  'opened.feed-ended-clinic': 'Ihre Praxis hat sie beendet: {when}.',
  'opened.feed-ended-end-of-care': 'Sie endete mit Ihrer Behandlung: {when}.',
  'opened.feed-make': 'Private Adresse erstellen',
  'opened.feed-make-anew': 'Neue Adresse erstellen (die alte endet)',
  'opened.feed-end': 'Adresse beenden',
  'opened.feed-end-sure': 'Die Adresse beenden? Ein Kalender, der sie hat, bekommt dann nichts mehr.',
  'opened.feed-end-yes': 'Ja, beenden',
  'opened.feed-end-no': 'Nein, behalten',
  'opened.feed-once':
    'Hier ist sie, nur dieses eine Mal. Sie wird nirgends aufbewahrt: Wenn Sie sie verlieren, erstellen Sie eine neue.',
  'opened.feed-address': 'Private Adresse Ihres Kalenders',
  'opened.feed-open': 'In einem Kalender auf diesem Telefon öffnen',
  'opened.feed-ended-now': 'Die Adresse ist beendet',
} as const satisfies Same<typeof english>;
