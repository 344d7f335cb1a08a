import type { beforeVisitWords } from '#messages/en/pages/before-visit.ts';

/** Questions before a visit, and what was agreed to, in German. */
export const beforeVisitGerman = {
  'visit.lead': 'Antworten Sie zu Hause, dann bleibt beim Termin mehr Zeit für Sie.',
  'visit.note': 'Sie gehen die Antworten dort gemeinsam durch. Dies ist kein Hilferuf.',
  'visit.sent-before':
    'Sie haben schon Antworten gesendet. Senden Sie noch einmal, gelten nur die neuen Antworten.',
  'visit.confirmed': 'Ihre Antworten wurden in der Praxis durchgesehen.',
  'visit.begin': 'Anfangen',
  'visit.count': 'Frage {number} von {all}',
  'visit.unknown': 'Ich weiß es nicht',
  'visit.which': 'Welche davon?',
  'visit.which-hint': 'Kreuzen Sie alles an, was passt. Sind Sie unsicher, kreuzen Sie nichts an.',
  'visit.limbs': 'Welcher Arm oder welches Bein?',
  'visit.joints': 'Welches Gelenk?',
  'visit.check': 'Ansehen und senden',
  'visit.check-note':
    'Sie haben {answered} von {all} Fragen beantwortet. Was fehlt, wird beim Termin gefragt.',
  'visit.all-no': 'Alle anderen: nein.',
  'visit.send': 'An die Praxis senden',
  'visit.sending': 'Wird gesendet…',
  'visit.sent': 'Ihre Praxis hat die Antworten.',
  'visit.not-sent':
    'Nicht gesendet. Ihre Antworten stehen noch auf dieser Seite. Versuchen Sie es gleich noch einmal.',
  'visit.home': 'Zurück zu heute',
  'visit.now-title': 'Ist das gerade jetzt so?',
  'visit.now': 'Rufen Sie {number} an, wenn es jetzt da ist. Warten Sie nicht auf den Termin.',
  'visit.today-title': 'Rufen Sie heute Ihre Praxis an',
  'visit.today': 'Warten Sie nicht auf den Termin: {phone}. Üben Sie nicht, bevor wir gesprochen haben.',
  'agree.lead': 'Sie können jede Zustimmung jederzeit zurücknehmen. Einen Grund brauchen Sie nicht.',
  'agree.watched': 'Die Praxis sieht an, was Sie senden: {hours}. Zu anderen Zeiten sieht niemand hin.',
  'agree.not-watched':
    'Sie haben nicht zugestimmt, dass die Praxis ansieht, was Sie senden. Verlassen Sie sich nicht darauf.',
  'agree.call': 'Fühlen Sie sich in Gefahr, rufen Sie {number} an. Die Praxis erreichen Sie unter {phone}.',
  'agree.occlusion-supervised': 'Die Manschette, mit einer Fachperson neben Ihnen',
  'agree.occlusion-unsupervised': 'Die Manschette zu Hause, allein',
  'agree.remote-monitoring': 'Die Praxis sieht an, was Sie senden',
  'agree.sharing': 'Auskunft an andere, die Sie behandeln',
  'agree.export': 'Weitergabe Ihrer Akte als Datei',
  'agree.stands': 'Sie haben zugestimmt.',
  'agree.none': 'Sie haben nicht zugestimmt.',
  'agree.give': 'Ich stimme zu',
  'agree.withdraw': 'Zurücknehmen',
  'agree.proposal': 'Ihre Praxis hat diese Sätze noch nicht geprüft.',
  'agree.ended': 'Zurückgenommen. Was daran hing, ist beendet.',
} as const satisfies Readonly<Record<keyof typeof beforeVisitWords, string>>;
