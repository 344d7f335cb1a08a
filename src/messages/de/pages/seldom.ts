import type { words as english } from '#messages/en/pages/seldom.ts';
import type { Same } from '#messages/sentence.ts';

/** Answers typed by somebody else; language, units, and how a clock says that it is over, in German. */
export const words = {
  'entered.title': 'Jemand anderes trägt die Antworten ein',
  'entered.about': 'Tragen Sie ein, was die Person Ihnen sagt. Was sie nicht weiß, lassen Sie offen.',
  'entered.who': 'Wer sind Sie?',
  'entered.relative': 'Angehörige oder Angehöriger',
  'entered.friend': 'Freundin, Freund oder Nachbar',
  'entered.paid-carer': 'Pflegekraft',
  'entered.leave': 'Ich wurde gebeten, die Antworten einzutragen',
  'entered.leave-missing': 'Ankreuzen, sobald Sie darum gebeten wurden.',
  'entered.go': 'Für die Person eintragen',
  'entered.now': 'Die Antworten trägt ein: {who}',
  'entered.stop': 'Ich trage wieder selbst ein',
  'preferences.title': 'Sprache und Gewichte',
  'preferences.language': 'Sprache',
  'preferences.clinic-words':
    'Was Ihre Praxis selbst schreibt, bleibt in ihrer Sprache. Die deutsche Übersetzung hat noch niemand geprüft.',
  'preferences.unit': 'Gewichte in',
  'preferences.kg': 'Kilogramm (kg)',
  'preferences.lb': 'Pfund (lb, englisch)',
  'preferences.sound': 'Wenn eine Pause oder die Zeit mit der Manschette um ist',
  'preferences.sound-none': 'Nur anzeigen',
  'preferences.sound-buzz': 'Vibrieren',
  'preferences.sound-tone': 'Vibrieren und Ton',
  'earlier.title': {
    by: 'count',
    one: 'Vom {date}: 1 Satz gemacht',
    other: 'Vom {date}: {count} Sätze gemacht',
  },
  'earlier.title-none': 'Vom {date}: noch kein Satz gemacht',
  'earlier.about':
    'Damit können Sie heute nicht weitermachen. Danach kommt das Training von heute, ganz von vorn. Was Sie damals gemacht haben, bekommt die Praxis mit der Uhrzeit von damals.',
  'earlier.send': 'Senden, was ich gemacht habe',
  'earlier.throw-away': 'Verwerfen',
  'earlier.sure': 'Wirklich verwerfen? Ihre Praxis sieht es dann nicht.',
  'earlier.yes': 'Ja, verwerfen',
  'earlier.no': 'Nein, behalten',
} as const satisfies Same<typeof english>;
