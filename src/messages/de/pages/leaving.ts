import type { words as english } from '#messages/en/pages/leaving.ts';
import type { Same } from '#messages/sentence.ts';

/** Signing out of a phone that holds something, or has no signal; and a locked phone; in German. */
export const words = {
  'leave.unfinished': {
    by: 'count',
    one: 'Sie haben etwas angefangen und noch nicht abgeschlossen',
    other: 'Sie haben {count} Dinge angefangen und noch nicht abgeschlossen',
  },
  'leave.unsent': {
    by: 'count',
    one: '1 Eintrag ist noch nicht gesendet. Er bleibt verschlossen auf diesem Telefon und geht an die Praxis, wenn Sie sich wieder anmelden.',
    other:
      '{count} Einträge sind noch nicht gesendet. Sie bleiben verschlossen auf diesem Telefon und gehen an die Praxis, wenn Sie sich wieder anmelden.',
  },
  'leave.unsent-title': 'Noch nicht alles ist gesendet',
  'leave.no-signal-title': 'Es gibt kein Netz',
  'leave.no-signal':
    'Ohne Netz lässt sich dieses Telefon nur sperren. Dann öffnet niemand Ihre Seiten, auch Sie nicht, bis es wieder Netz gibt und Sie sich anmelden.',
  'leave.cuff-title': 'Die Manschette ist angelegt',
  'leave.cuff': 'Nehmen Sie sie zuerst ab. Die Uhr dazu läuft auf der Seite Ihres Trainings.',
  'leave.to-cuff': 'Zur Uhr und zu „Jetzt abnehmen“',
  'leave.stay': 'Angemeldet bleiben',
  'leave.lock': 'Sperren und behalten, was ich angefangen habe',
  'leave.lock-only': 'Dieses Telefon sperren',
  'leave.go': 'Abmelden',
  'leave.throw-away': 'Verwerfen, was ich angefangen habe, und abmelden',
  'leave.sure': 'Wirklich verwerfen? Ihre Praxis sieht es dann nicht.',
  'leave.yes': 'Ja, verwerfen',
  'locked.title': 'Dieses Telefon ist gesperrt',
  'locked.text':
    'Sie haben sich abgemeldet, und es gibt kein Netz. Sobald es wieder Netz gibt, melden Sie sich mit Ihrer PIN an.',
  'locked.again': 'Noch einmal versuchen',
} as const satisfies Same<typeof english>;
