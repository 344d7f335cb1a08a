import type { words as english } from '#messages/en/pages/frame.ts';
import type { Same } from '#messages/sentence.ts';

/** What stands around every page of a patient, and what every question has, in German. */
export const words = {
  'hours.title': 'Wann die Praxis Ihre Antworten liest',
  'hours.who': '{clinic} liest Ihre Antworten zu diesen Zeiten:',
  'hours.outside': 'Außerhalb dieser Zeiten liest sie niemand. Rufen Sie im Notfall {emergency} an.',
  'hours.nobody-answers':
    'Rufen Sie {clinic} an. Meldet sich dort niemand, warten Sie nicht: Rufen Sie {urgent} an.',
  'hours.phone': 'Telefon der Praxis: {phone}',
  'skip.main': 'Zum Inhalt',
  'skip.pages': 'Seiten',
  'ask.continue': 'Weiter',
  'ask.back': 'Zurück',
  'ask.unknown': 'Weiß ich nicht',
  'ask.yes': 'Ja',
  'ask.no': 'Nein',
  'ask.not-answered': 'nicht beantwortet',
  'ask.change': 'Ändern',
  'ask.choose-must': 'Wählen Sie eine Antwort.',
  'ask.problem': 'Da stimmt etwas nicht',
  'ask.error': 'Fehler:',
  'sign-out.go': 'Abmelden',
  'opened.title': 'Wer Ihre Akte geöffnet hat',
  'visit.title': 'Fragen vor Ihrem Termin',
  'consent.title': 'Ihre Zustimmungen',
  'history.title': 'Wie es ging',
  'weight.g': '{number}\u00a0g',
  'weight.kg': '{number}\u00a0kg',
  'weight.lb': '{number}\u00a0lb',
  'length.second': { by: 'count', one: '{count}\u00a0Sekunde', other: '{count}\u00a0Sekunden' },
  'length.minute': { by: 'count', one: '{count}\u00a0Minute', other: '{count}\u00a0Minuten' },
  'ask.score': '{score} von 10',
  'joint.name': '{joint:label}',
  'frame.home': 'Zurück zu „Heute“',
  'write.title': 'Ihrer Praxis schreiben',
  'frame.no-answer':
    'Der Server der Praxis hat nicht geantwortet. Was Sie eingegeben haben, ist noch hier. Versuchen Sie es noch einmal.',
  'frame.until-scripts':
    'Warten Sie, bis die Seite geladen ist. Sonst führt dieser Browser keine Skripte aus; dieses Formular braucht sie.',
  'frame.today': 'Heute',
  'frame.account': 'Ihre Anmeldung',
  'frame.handout': 'Mein Plan',
  'ask.given': 'Ihre Antwort',
  'hours.not-at-once': 'Das liest niemand sofort',
  'hours.emergency': 'Im Notfall: {emergency}',
} as const satisfies Same<typeof english>;

/** How the language writes joints and days comes with the words of every page. */
export { forms } from '../forms.ts';
