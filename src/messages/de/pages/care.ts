import type { words as english } from '#messages/en/pages/care.ts';
import type { Same } from '#messages/sentence.ts';

/** In German. What to do when there is a warning sign or news. All of this is the clinic’s to approve before use. */
export const words = {
  'care.title-emergency': 'Stopp. Rufen Sie jetzt {emergency} an',
  'care.title-same-day': 'Stopp. Rufen Sie heute die Praxis an',
  'care.title-routine': 'Schluss für heute. Rufen Sie die Praxis an',
  'care.cuff-first': 'Nehmen Sie zuerst die Manschette oder die elastische Binde ab.',
  'care.said': 'Sie haben gesagt:',
  'care.emergency':
    'Warten Sie nicht auf die Praxis. Fahren Sie nicht selbst. Ist jemand in der Nähe, sagen Sie es jetzt.',
  'care.same-day': 'Rufen Sie jetzt an: {phone}. Wird es schlimmer, rufen Sie {emergency} an.',
  'care.routine':
    'Rufen Sie an, bevor Sie wieder trainieren: {phone}. Wird es schlimmer, rufen Sie sofort an.',
  'care.call-emergency': '{emergency} anrufen',
  'care.call-urgent': 'Meldet sich niemand: {urgent}',
  'care.call-clinic': '{clinic} anrufen: {phone}',
  'care.stopped': 'Ihr Training ist gestoppt. Machen Sie keine weiteren Übungen, bis die Praxis zustimmt.',
  'care.sent': 'Diese Antwort ist bei Ihrer Praxis angekommen. Vielleicht hat sie noch niemand gelesen.',
  'care.kept':
    'Diese Antwort ist noch nicht bei der Praxis. Rufen Sie an. Warten Sie nicht, bis das Telefon sendet.',
  'care.to-approve': 'Diesen Rat muss Ihre Praxis noch freigeben.',
  'news.medicine': 'Ein neues Medikament oder eine neue Dosis',
  'news.illness': 'Fieber oder eine Krankheit',
  'news.operation': 'Eine Operation, ein Gips oder mehr als drei Tage im Bett',
  'news.fall': 'Ein Sturz',
  'news.pregnancy':
    'Sie sind oder könnten schwanger sein, oder Sie haben in den letzten 12 Wochen ein Kind bekommen',
  'news.heart': 'Neue Schmerzen in der Brust, Ohnmacht oder Atemnot',
  'news.clot': 'Ein Blutgerinnsel oder eine geschwollene Wade',
  'news.skin': 'Wunde, offene oder entzündete Haut an diesem Arm oder Bein',
  'news.pressure': 'Ein hoher Blutdruck wurde gemessen',
} as const satisfies Same<typeof english>;
