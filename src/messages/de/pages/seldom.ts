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
  'clock.wrong': 'Die Uhr Ihres Telefons geht falsch: Sie zeigt {date}, {time} Uhr',
  'clock.right':
    'Es ist {date}, {time} Uhr. {clinic} richtet sich nach der richtigen Zeit, und diese Seite auch.',
  'clock.put-right': 'So stellen Sie die Uhr richtig: Einstellungen, Datum und Uhrzeit, Automatisch.',
  'clock.other-day': 'Bei Ihnen ist {date}. Bei {clinic} ist {there}.',
  'clock.counts-for': 'Ihre Antworten zählen für Ihren Tag, {date}.',
  'clock.other-zone':
    'Sie sind gar nicht verreist? Dann ist Ihr Telefon auf einen anderen Ort eingestellt. Öffnen Sie: Einstellungen, Datum und Uhrzeit, Automatisch.',
  'morning-hours.early':
    'Die Morgenfragen können Sie ab {from} Uhr beantworten. Frühere Antworten sagen noch etwas über den Abend.',
  'morning-hours.early-kept':
    'Gespeichert. Ab {from} Uhr können Sie noch einmal antworten. Diese Antwort zählt dann für den Plan.',
  'morning-hours.over':
    'Heute keine Morgenfragen mehr. Nach {to} Uhr kann eine Antwort den Plan nicht mehr ändern. Sie können uns trotzdem sagen, wie es war. Die Praxis sieht es.',
  'morning-hours.over-kept': 'Gespeichert. Für den Plan kam es zu spät.',
  'morning-hours.tell': 'Trotzdem antworten',
  'twice.title':
    'Diese Morgenfragen sind schon auf einem anderen Telefon beantwortet. Welche Antworten zählen?',
  'twice.both': 'Zuerst: {first}. Später: {last}. Ihre Praxis sieht beide.',
  'twice.pain': 'Schmerz, {joint}: {score}',
  'twice.use-last': 'Die späteren Antworten nehmen',
  'twice.keep-first': 'Die ersten Antworten behalten',
  'correct.title': 'Was Sie heute gesendet haben',
  'correct.about': 'Ihre Praxis sieht, was Sie ändern und was Sie vorher gesendet haben.',
  'correct.send': 'Änderung senden',
  'correct.done': 'Geändert',
  'correct.set': '{title}: Wiederholungen in Satz {set}',
  'correct.load': '{title}: Gewicht',
  'correct.not-counted': 'nicht gezählt',
} as const satisfies Same<typeof english>;
