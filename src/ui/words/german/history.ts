import type { historyWords } from '../history.ts';

/** How it went so far, in German. */
export const historyGerman = {
  'history.picture-title': 'Sechs Wochen auf einen Blick',
  'history.sum-one-session': '1 Training seit {day}.',
  'history.sum-sessions': '{count} Trainings seit {day}.',
  'history.sum-load': '{title}: {first} zu Beginn, {last} beim letzten Mal.',
  'history.sum-repetitions': '{title}: insgesamt {first} zu Beginn, {last} beim letzten Mal.',
  'history.sum-pain-same': 'Schmerz am Morgen, {joint}: jedes Mal {low}.',
  'history.sum-pain': 'Schmerz am Morgen, {joint}: von {low} bis {high}.',
  'history.picture-load': 'Gewicht: {title}',
  'history.picture-repetitions': 'Wiederholungen insgesamt: {title}',
  'history.picture-pain': 'Schmerz am Morgen, 0 bis 10',
  'history.picture-is': 'Bild dessen, was die Sätze darüber sagen, Tag für Tag.',
  'history.none': 'Es ist noch nichts eingetragen. Es beginnt mit Ihrem ersten Training.',
  'history.session': 'Training',
  'history.bad-day': 'Leichterer Tag',
  'history.test': 'Test',
  'history.morning': 'Morgenfragen',
  'history.pain-before': 'Schmerz davor',
  'history.pain-during': 'Stärkster Schmerz im Training',
  'history.pain-after': 'Schmerz danach',
  'history.pain-morning': 'Schmerz am Morgen',
  'history.flare': 'Schub',
  'history.not-counted': 'nicht gezählt',
  'history.what-next': 'Was daraus folgte: {joint}',
  'history.why': 'Warum',
} as const satisfies Readonly<Record<keyof typeof historyWords, string>>;
