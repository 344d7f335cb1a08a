import type { words as english } from '#messages/en/pages/consents.ts';
import type { Same } from '#messages/sentence.ts';

/** What a patient consents to, in German. */
export const words = {
  'consent.lead': 'Sie können jede Zustimmung jederzeit zurücknehmen. Einen Grund brauchen Sie nicht.',
  'consent.monitored': 'Die Praxis sieht an, was Sie senden: {hours}. Zu anderen Zeiten sieht niemand hin.',
  'consent.not-monitored':
    'Sie haben nicht zugestimmt, dass die Praxis ansieht, was Sie senden. Verlassen Sie sich nicht darauf.',
  'consent.call': 'Fühlen Sie sich in Gefahr, rufen Sie {number} an. Die Praxis erreichen Sie unter {phone}.',
  'consent.occlusion-supervised': 'Die Manschette, mit einer Fachperson neben Ihnen',
  'consent.occlusion-unsupervised': 'Die Manschette zu Hause, allein',
  'consent.remote-monitoring': 'Die Praxis sieht an, was Sie senden',
  'consent.sharing': 'Auskunft an andere, die Sie behandeln',
  'consent.export': 'Weitergabe Ihrer Akte als Datei',
  'consent.given': 'Sie haben zugestimmt.',
  'consent.not-given': 'Sie haben nicht zugestimmt.',
  'consent.give': 'Ich stimme zu',
  'consent.withdraw': 'Zurücknehmen',
  'consent.proposal': 'Ihre Praxis hat diese Sätze noch nicht geprüft.',
  'consent.ended': 'Zurückgenommen. Was daran hing, ist beendet.',
} as const satisfies Same<typeof english>;
