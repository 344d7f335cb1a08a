import type { words as english } from '#messages/en/pages/consents.ts';
import type { Same } from '#messages/sentence.ts';

/** What a patient consents to, in German. */
export const words = {
  'consent.lead':
    'Sie können zu jedem Punkt Nein sagen und jede Zustimmung jederzeit zurücknehmen. Einen Grund müssen Sie nicht nennen.',
  'consent.monitored':
    'Die Praxis liest zu diesen Zeiten, was Sie senden: {hours}. Außerhalb dieser Zeiten liest es niemand.',
  'consent.not-monitored':
    'Sie haben nicht zugestimmt, dass die Praxis liest, was Sie senden. Verlassen Sie sich nicht darauf.',
  'consent.call': 'Sind Sie in Gefahr, rufen Sie {number} an. Die Praxis erreichen Sie unter {phone}.',
  'consent.treatment': 'Untersuchung und Behandlung',
  'consent.record-keeping': 'Eine Akte über Sie führen',
  'consent.occlusion-supervised':
    'Die Manschette, mit einer Physiotherapeutin oder einem Physiotherapeuten neben Ihnen',
  'consent.occlusion-unsupervised': 'Die Manschette zu Hause, allein',
  'consent.remote-monitoring': 'Die Praxis liest, was Sie senden',
  'consent.sharing': 'Auskunft an andere, die Sie behandeln',
  'consent.export': 'Herausgabe Ihrer Akte als Datei',
  'consent.given': 'Sie haben zugestimmt.',
  'consent.refused': 'Sie haben Nein gesagt.',
  'consent.withdrawn': 'Sie haben Ihre Zustimmung zurückgenommen.',
  'consent.not-asked': 'Sie haben noch nicht geantwortet.',
  'consent.give': 'Ich stimme zu',
  'consent.refuse': 'Ich stimme nicht zu',
  'consent.withdraw': 'Zurücknehmen',
  'consent.proposal': 'Ihre Praxis hat diesen Wortlaut noch nicht geprüft.',
  'consent.not-sent': 'Nicht gesendet. Versuchen Sie es gleich noch einmal.',
  'consent.ended': 'Ihre Zustimmung ist zurückgenommen. Übungen, für die sie nötig ist, fallen ab jetzt weg.',
  'consent.noted': 'Ihr Nein ist vermerkt. Übungen, für die diese Zustimmung nötig ist, bleiben weg.',
} as const satisfies Same<typeof english>;
