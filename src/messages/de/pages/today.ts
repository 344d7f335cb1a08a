import type { words as english } from '#messages/en/pages/today.ts';
import type { Same } from '#messages/sentence.ts';

/** Today’s page, in German. */
export const words = {
  'today.more': 'Mehr',
  'today.title': 'Hallo {name}',
  'today.list-title': 'Ihre Übungen heute',
  'today.start': 'Training beginnen',
  'today.resume': 'Mit dem Training weitermachen',
  'today.resume-note': 'Sie haben um {time} begonnen. Alle Antworten sind noch da.',
  'today.discard': 'Diese Antworten löschen und neu beginnen',
  'today.start-easier': 'Leichteres Training beginnen',
  'today.easier': 'Heute leichter trainieren',
  'today.nothing-title': 'Heute kein Training',
  'today.nothing': 'Für heute ist nichts geplant. Ein freier Tag gehört zum Plan.',
  'today.none-yet': 'Für Sie sind noch keine Übungen festgelegt.',
  'today.sent-title': 'Ihr Training ist beendet',
  'today.sent': 'Ihr Training von heute ist bei der Praxis.',
  'today.no-more': 'Mehr Training ist heute nicht geplant.',
  'today.questions-due': {
    by: 'count',
    one: 'Ihre Praxis hat jetzt 1 Frage an Sie.',
    other: 'Ihre Praxis hat jetzt {count} Fragen an Sie.',
  },
  'today.questions-answer': 'Jetzt beantworten',
  'today.changed': 'Etwas hat sich geändert',
  'today.correct': 'Eine Antwort ändern',
  'today.sent-here': 'Es ist auf diesem Telefon gespeichert.',
  'today.rest-title': 'Heute Pause',
  'today.rest': 'Machen Sie heute keine dieser Übungen.',
  'today.rest-some': 'Lassen Sie diese Übung heute aus.',
  'today.easier-set': 'Heute leichter, wegen Ihrer letzten Antworten.',
  'today.elsewhere': 'Nicht heute: {titles}.',
  'today.changes': 'Was sich geändert hat, und warum',
  'today.unchanged': 'Gleich wie bisher. Warum?',
  'today.changes-only': 'Was sich geändert hat',
  'today.messages-earlier': 'Nachrichten aus der Zeit vor diesem Plan',
  'today.messages': 'Von Ihrer Praxis',
  'today.appointment': 'Nächster Termin: {when}',
  'today.message-from': '{name}, {date}',
  'today.flag-told':
    'Sie haben heute ein Warnzeichen angegeben. Machen Sie keine Übungen, bis Sie mit {clinic} gesprochen haben: {phone}.',
  'today.flare-told':
    'Sie haben heute Morgen einen Schub angegeben. Was das für heute heißt, erfahren Sie hier, sobald es Netz gibt. Machen Sie bis dahin keine Übungen. Oder rufen Sie {clinic} an: {phone}.',
  'today.less-told':
    'Wegen Ihrer Antworten von heute Morgen machen Sie heute weniger als geplant, bis sie in der Praxis ausgewertet sind. Dafür braucht das Telefon Netz.',
  'today.rest-told':
    'Lassen Sie wegen Ihrer Antworten von heute Morgen das Gelenk heute in Ruhe, bis sie in der Praxis ausgewertet sind. Dafür braucht das Telefon Netz. Oder rufen Sie {clinic} an: {phone}.',
  'today.contact-emergency':
    'Ihre letzten Antworten zeigen, dass Sie sofort Hilfe brauchen. Rufen Sie jetzt {emergency} an.',
  'today.contact-same-day':
    'Wir müssen heute über Ihre letzten Antworten sprechen. Rufen Sie {clinic} an: {phone}.',
  'today.contact-routine':
    'Ihre Praxis möchte mit Ihnen sprechen. Die Praxis ruft Sie an. Sie können auch selbst anrufen: {phone}.',
  'today.morning-done': 'Ihre Morgenfragen sind beantwortet.',
  'today.morning-change': 'Meine Antworten ändern',
  'today.late-title': 'Die Morgenfragen von gestern',
  'today.late':
    'Sie sind offen geblieben. Sie können sie noch beantworten. Was Sie nicht mehr wissen, lassen Sie offen.',
  'today.late-start': 'Für gestern antworten',
  'today.given-on': 'Diese Seite ist vom {date}. Die Praxis kann seitdem etwas geändert haben.',
  'today.too-old':
    'Diese Seite ist vom {date}, und es gibt kein Netz. Rufen Sie vor dem nächsten Training {clinic} an: {phone}.',
  'today.two-hours-title': 'Zwei Stunden nach dem Training',
  'today.two-hours': 'Eine Frage zu Ihren Schmerzen jetzt.',
  'today.two-hours-start': 'Jetzt antworten',
  'elsewhere.title': 'Diese Seite ist in einem anderen Fenster offen',
  'elsewhere.text': 'Machen Sie dort weiter oder hier. Antworten können Sie immer nur in einem Fenster.',
  'elsewhere.take-over': 'Hier weitermachen',
  'visit.waits': 'Ihre Praxis hat Fragen an Sie vor dem Termin.',
  'visit.begin-now': 'Jetzt beantworten',
  'scale.pain-low': 'kein Schmerz',
  'scale.pain-high': 'stärkster denkbarer Schmerz',
  'morning.pain': 'Wie stark schmerzt {joint:your} heute Morgen?',
  'today.questions-missing': 'Die Fragen sind noch nicht geladen. Das geht nur mit Netz.',
  'today.fetch-questions': 'Jetzt laden',
} as const satisfies Same<typeof english>;
