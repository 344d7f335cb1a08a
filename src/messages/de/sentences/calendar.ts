import type { calendar as english } from '#messages/en/sentences/calendar.ts';
import type { Same } from '#messages/sentence.ts';

/** What stands in a calendar of the patient’s own, in German. */
export const calendar = {
  name: 'Mein Übungsplan',
  session: 'Übungen',
  'session-note':
    'Eine Erinnerung. Jede Zeit an diesem Tag passt. Sehen Sie zuerst in Ihren Plan, er kann sich geändert haben.',
  morning: 'Fragen am Morgen',
  'morning-note': 'Eine Erinnerung an die Fragen auf Ihrem Telefon.',
  review: 'Termin in der Praxis',
  'review-note': 'So gebucht, als diese Datei gemacht wurde.',
  retest: 'Eine Messung steht an',
  'retest-note': 'Ab diesem Tag. Wann, sagt Ihnen Ihre Praxis.',
} as const satisfies Same<typeof english>;
