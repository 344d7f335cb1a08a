import type { words as english } from '#messages/en/pages/saving.ts';
import type { Same } from '#messages/sentence.ts';

/** What is saved on this phone, and what has reached the clinic, in German. */
export const words = {
  'saved.title': 'Auf diesem Telefon gespeichert',
  'saved.all-sent': 'Alle Ihre Antworten sind bei der Praxis.',
  'saved.waiting': {
    by: 'count',
    one: '1 Eintrag auf diesem Telefon ist noch nicht gesendet.',
    other: '{count} Einträge auf diesem Telefon sind noch nicht gesendet.',
  },
  'saved.sending': 'Ihre Antworten werden gerade gesendet.',
  'saved.no-signal': 'Es gibt kein Netz. Ihre Antworten bleiben hier und werden später von selbst gesendet.',
  'saved.signed-out':
    'Sie sind abgemeldet. Ihre Antworten bleiben hier. Melden Sie sich zum Senden wieder an.',
  'saved.sign-in': 'Wieder anmelden',
  'saved.kept-aside':
    'Die Praxis konnte einen Eintrag nicht annehmen. Er bleibt auf diesem Telefon. Rufen Sie {phone} an.',
  'saved.not-kept':
    'Dieses Telefon kann Ihre Antworten nicht speichern. Lassen Sie die Seite offen, bis sie gesendet sind.',
  'saved.try-now': 'Jetzt senden',
  'entry.session': 'Training',
  'entry.morning': 'Morgenfragen',
  'entry.two-hours': 'Zwei Stunden danach',
  'entry.message': 'Nachricht',
  'entry.sign': 'Warnzeichen',
  'entry.home-answers': 'Fragen Ihrer Praxis',
  'entry.at': '{kind}, {time}',
  'entry.waiting': 'Hier gespeichert',
  'entry.stored': 'Bei der Praxis',
  'entry.aside': 'Bleibt hier, bitte anrufen',
} as const satisfies Same<typeof english>;
