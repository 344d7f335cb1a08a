import type { words as english } from '#messages/en/pages/write.ts';
import type { Same } from '#messages/sentence.ts';

/** Writing to the clinic, in German. */
export const words = {
  'write.lead':
    'Stellen Sie uns eine Frage oder berichten Sie uns etwas. Für Dringendes ist das nicht gedacht.',
  'write.when': 'Wir lesen Nachrichten, wenn wir da sind: {hours}',
  'write.urgent': 'Ist es dringend? Rufen Sie {phone} an. Bei Gefahr wählen Sie {emergency}.',
  'write.label': 'Ihre Nachricht',
  'write.hint': 'Bleibt beim Schreiben auf diesem Telefon gespeichert.',
  'write.send': 'Senden',
  'write.empty': 'Schreiben Sie zuerst Ihre Nachricht.',
  'write.sent': 'Gesendet. Jemand in Ihrer Praxis wird sie lesen.',
  'write.kept': 'Auf diesem Telefon gespeichert. Sie geht an Ihre Praxis, sobald es Netz gibt.',
  'write.kept-signed-out': 'Auf diesem Telefon gespeichert. Melden Sie sich zum Senden wieder an.',
  'write.not-kept':
    'Auf diesem Telefon ist kein Platz dafür. Lassen Sie diese Seite offen oder rufen Sie in der Praxis an.',
  'write.waits': {
    by: 'count',
    one: '1 Nachricht auf diesem Telefon ist noch nicht gesendet.',
    other: '{count} Nachrichten auf diesem Telefon sind noch nicht gesendet.',
  },
  'write.conversation': 'Was Sie und Ihre Praxis geschrieben haben',
  'write.none-yet': 'Noch nichts.',
  'write.from-me': 'Sie, {date}',
  'write.from-clinic': '{name}, {date}',
} as const satisfies Same<typeof english>;
