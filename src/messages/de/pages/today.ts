import type { words as english } from '#messages/en/pages/today.ts';
import type { Same } from '#messages/sentence.ts';

/** Today’s page, in German. */
export const words = {
  'today.title': 'Hallo {name}',
  'today.list-title': 'Ihre Übungen heute',
  'today.start': 'Training beginnen',
  'today.resume': 'Mit dem Training weitermachen',
  'today.resume-note': 'Sie haben um {time} begonnen. Alle Antworten sind noch da.',
  'today.discard': 'Diese Antworten löschen und neu beginnen',
  'today.easier': 'Heute leichter trainieren',
  'today.nothing-title': 'Heute kein Training',
  'today.nothing': 'Für heute ist nichts geplant. Ein freier Tag gehört zum Plan.',
  'today.none-yet': 'Für Sie sind noch keine Übungen festgelegt.',
  'today.sent-title': 'Ihr Training ist beendet',
  'today.sent': 'Ihre Praxis hat das Training von heute. Mehr Training ist heute nicht geplant.',
  'today.sent-here': 'Es ist auf diesem Telefon gespeichert und wird an die Praxis gesendet.',
  'today.rest-title': 'Heute Pause',
  'today.rest': 'Machen Sie heute keine dieser Übungen.',
  'today.rest-some': 'Lassen Sie diese Übung heute aus.',
  'today.easier-set': 'Heute leichter, wegen Ihrer letzten Antworten.',
  'today.elsewhere': 'Nicht heute: {titles}.',
  'today.changes': 'Was sich geändert hat, und warum',
  'today.messages': 'Von Ihrer Praxis',
  'today.message-from': '{name}, {date}',
  'today.cautions': 'Denken Sie daran',
  'today.flag-told':
    'Sie haben heute ein Warnzeichen angegeben. Machen Sie keine Übungen, bis Sie mit {clinic} gesprochen haben: {phone}.',
  'today.contact-emergency':
    'Ihre letzten Antworten zeigen, dass Sie sofort Hilfe brauchen. Rufen Sie jetzt {emergency} an.',
  'today.contact-same-day':
    'Wir müssen heute über Ihre letzten Antworten sprechen. Rufen Sie {clinic} an: {phone}.',
  'today.contact-routine': 'Ihre Praxis möchte mit Ihnen sprechen. Sie ruft an, oder Sie rufen an: {phone}.',
  'today.morning-done': 'Ihre Morgenfragen sind beantwortet.',
  'today.morning-change': 'Meine Antworten ändern',
  'today.late-title': 'Die Morgenfragen von gestern',
  'today.late':
    'Sie sind offen geblieben. Sie können sie noch beantworten. Was Sie nicht mehr wissen, lassen Sie offen.',
  'today.late-start': 'Für gestern antworten',
  'today.given-on': 'Diese Seite ist von {date}. Die Praxis kann seitdem etwas geändert haben.',
  'today.too-old':
    'Diese Seite ist von {date}, und es gibt kein Netz. Rufen Sie vor dem nächsten Training {clinic} an: {phone}.',
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
  'pain.limit': 'Schmerz {joint:in} bis {limit} von 10 ist erlaubt. Darüber: aufhören.',
  'morning.pain': 'Wie stark schmerzt {joint:your} heute Morgen?',
  'item.how': 'So geht es',
  'today.questions-missing': 'Die Fragen sind noch nicht geladen. Dafür braucht es Empfang.',
  'today.fetch-questions': 'Jetzt laden',
} as const satisfies Same<typeof english>;
