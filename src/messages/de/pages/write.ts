import type { words as english } from '#messages/en/pages/write.ts';
import type { Same } from '#messages/sentence.ts';

/** Writing to the clinic, in German. */
export const words = {
  'write.lead':
    'Stellen Sie uns eine Frage oder berichten Sie uns etwas. Für Dringendes ist das nicht gedacht.',
  'write.when': 'Wir lesen Nachrichten, wenn wir da sind: {hours}',
  'write.urgent': 'Ist es dringend? Rufen Sie {phone} an. Bei Gefahr wählen Sie {emergency}.',
  'write.label': 'Ihre Nachricht',
  'write.send': 'Senden',
  'write.empty': 'Schreiben Sie zuerst Ihre Nachricht.',
  'write.sent': 'Gesendet. Jemand in Ihrer Praxis wird sie lesen.',
  'write.not-sent': 'Sie wurde nicht gesendet. Versuchen Sie es noch einmal oder rufen Sie an.',
  'write.mine': 'Was Sie geschrieben haben',
} as const satisfies Same<typeof english>;
