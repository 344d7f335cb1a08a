import type { words as english } from '#messages/en/pages/pre-visit.ts';
import type { Same } from '#messages/sentence.ts';

/** Questions before a visit, in German. */
export const words = {
  'visit.lead': 'Antworten Sie zu Hause, dann bleibt beim Termin mehr Zeit für Sie.',
  'visit.note': 'In der Praxis gehen wir Ihre Antworten mit Ihnen durch. Ein Hilferuf ist das nicht.',
  'visit.sent-before':
    'Sie haben schon Antworten gesendet. Senden Sie noch einmal, gelten nur die neuen Antworten.',
  'visit.confirmed': 'Ihre Antworten wurden in der Praxis durchgesehen.',
  'visit.begin': 'Anfangen',
  'visit.count': 'Frage {number} von {all}',
  'visit.which': 'Welche davon?',
  'visit.which-hint': 'Kreuzen Sie alles an, was passt.',
  'visit.not-said': 'Sie haben noch nicht gesagt, was davon. Beim Termin fragen wir Sie danach.',
  'visit.does-not-apply': 'Trifft auf mich nicht zu',
  'visit.day': 'Wann war es zuletzt?',
  'visit.day-hint': 'Lassen Sie es leer, wenn Sie es nicht wissen.',
  'visit.add': 'Möchten Sie etwas dazu sagen?',
  'visit.add-hint': 'Zum Beispiel das Medikament, ein Datum oder welches Bein.',
  'visit.limbs': 'Welcher Arm oder welches Bein?',
  'visit.joints': 'Welches Gelenk?',
  'visit.check': 'Ansehen und senden',
  'visit.check-note':
    'Sie haben {answered} von {all} Fragen beantwortet. Was Sie offen gelassen haben, fragen wir beim Termin.',
  'visit.all-no': 'Alle anderen: nein.',
  'visit.send': 'An die Praxis senden',
  'visit.sending': 'Wird gesendet…',
  'visit.sent': 'Ihre Praxis hat die Antworten.',
  'visit.not-sent':
    'Nicht gesendet. Ihre Antworten stehen noch auf dieser Seite. Versuchen Sie es gleich noch einmal.',
  'visit.now-title': 'Haben Sie das jetzt gerade?',
  'visit.now': 'Rufen Sie {number} an, wenn Sie es jetzt haben. Warten Sie nicht auf den Termin.',
  'visit.today-title': 'Rufen Sie heute Ihre Praxis an',
  'visit.today':
    'Warten Sie nicht auf den Termin: {phone}. Machen Sie keine Übungen, bevor wir miteinander gesprochen haben.',
  'ask.skip': 'Diese Frage auslassen',
} as const satisfies Same<typeof english>;
