import type { words as english } from '#messages/en/pages/care.ts';
import type { Same } from '#messages/sentence.ts';

/** In German. What to do when there is a warning sign or news. All of this is the clinic’s to approve before use. */
export const words = {
  'care.title-emergency': 'Stopp. Rufen Sie jetzt {emergency} an',
  'care.title-same-day': 'Stopp. Rufen Sie heute die Praxis an',
  'care.title-routine': 'Schluss für heute. Rufen Sie die Praxis an',
  'care.cuff-first': 'Zuerst die Manschette oder den Wickel abnehmen.',
  'care.said': 'Sie haben gesagt:',
  'care.emergency': 'Nicht auf die Praxis warten. Nicht selbst fahren. Ist jemand da, sagen Sie es jetzt.',
  'care.same-day':
    'Rufen Sie {clinic} jetzt an: {phone}. Meldet sich niemand und wird es schlimmer, rufen Sie {emergency} an.',
  'care.routine':
    'Rufen Sie {clinic} an, bevor Sie wieder trainieren: {phone}. Wird es schlimmer, sofort anrufen.',
  'care.call-emergency': '{emergency} anrufen',
  'care.call-clinic': '{clinic} anrufen: {phone}',
  'care.stopped': 'Ihr Training ist gestoppt. Keine weiteren Übungen, bis die Praxis zustimmt.',
  'care.sent': 'Ihre Praxis hat diese Antwort.',
  'care.kept':
    'Diese Antwort ist noch nicht bei der Praxis. Rufen Sie an. Warten Sie nicht, bis das Telefon sendet.',
  'care.to-approve': 'Diesen Rat muss Ihre Praxis noch freigeben.',
  'news.medicine': 'Ein neues Medikament oder eine neue Menge',
  'news.illness': 'Fieber oder eine Krankheit',
  'news.operation': 'Eine Operation, ein Gips oder mehr als drei Tage im Bett',
  'news.fall': 'Ein Sturz',
  'news.pregnancy': 'Sie sind oder könnten schwanger sein, oder Geburt in den letzten 12 Wochen',
  'news.heart': 'Neuer Brustschmerz, Ohnmacht oder Atemnot',
  'news.clot': 'Ein Blutgerinnsel oder eine geschwollene Wade',
  'news.skin': 'Wunde, offene oder entzündete Haut an diesem Arm oder Bein',
  'news.pressure': 'Ein hoher Blutdruck wurde gemessen',
} as const satisfies Same<typeof english>;
