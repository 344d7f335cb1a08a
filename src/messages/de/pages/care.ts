import type { careWords } from '#messages/en/pages/care.ts';

/** Warning signs and what to do, in German. All of this is the clinic's to approve before use. */
export const careGerman = {
  'flag.chest-pain': 'Schmerz oder Druck in der Brust',
  'flag.breathlessness': 'Viel mehr Atemnot, als die Anstrengung erklärt',
  'flag.fainting': 'Sie wurden ohnmächtig oder fast',
  'flag.severe-headache-or-vision': 'Plötzlich starker Kopfschmerz oder verändertes Sehen',
  'flag.saddle-or-bladder-change': 'Taub zwischen den Beinen, oder neue Probleme mit Blase oder Darm',
  'flag.hot-swollen-joint': 'Ein heißes, geschwollenes Gelenk',
  'flag.calf-pain-swelling': 'Eine Wade, die schmerzt, geschwollen oder warm ist',
  'flag.dark-urine': 'Dunkelbrauner Urin, oder Muskelschmerz viel stärker als Sie ihn kennen',
  'flag.unexplained-fever': 'Fieber oder Schüttelfrost, und Sie wissen nicht warum',
  'flag.cannot-bear-weight-or-deformity': 'Sie können es nicht belasten, oder es sieht verformt aus',
  'flag.persistent-limb-change-after-release':
    'Zehn Minuten nach dem Abnehmen der Manschette: noch taub, weiß, blau oder geschwollen',
  'flag.neck-pain-with-limb-symptoms':
    'Nackenschmerz mit tauben, schwachen oder ungeschickten Armen oder Beinen',
  'flag.new-weakness': 'Neue Schwäche in einem Arm oder Bein',
  'flag.fall-with-injury': 'Ein Sturz, bei dem Sie sich verletzt haben',
  'flag.locked-joint': 'Ein Gelenk, das festsitzt und sich nicht bewegt',
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
  'care.home': 'Zurück zu heute',
  'news.medicine': 'Ein neues Medikament oder eine neue Menge',
  'news.illness': 'Fieber oder eine Krankheit',
  'news.operation': 'Eine Operation, ein Gips oder mehr als drei Tage im Bett',
  'news.fall': 'Ein Sturz',
  'news.pregnancy': 'Sie sind oder könnten schwanger sein, oder Geburt in den letzten 12 Wochen',
  'news.heart': 'Neuer Brustschmerz, Ohnmacht oder Atemnot',
  'news.clot': 'Ein Blutgerinnsel oder eine geschwollene Wade',
  'news.skin': 'Wunde, offene oder entzündete Haut an diesem Arm oder Bein',
  'news.pressure': 'Ein hoher Blutdruck wurde gemessen',
} as const satisfies Readonly<Record<keyof typeof careWords, string>>;
