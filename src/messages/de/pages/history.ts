import type { words as english } from '#messages/en/pages/history.ts';
import type { Same } from '#messages/sentence.ts';

/** How it went so far, in German. */
export const words = {
  'history.picture-title': 'Sechs Wochen auf einen Blick',
  'history.sum-sessions': {
    by: 'count',
    one: '1 Training seit {date}.',
    other: '{count} Trainings seit {date}.',
  },
  'history.sum-load': '{title}: {first} zu Beginn, {last} beim letzten Mal.',
  'history.sum-repetitions': '{title}: insgesamt {first} zu Beginn, {last} beim letzten Mal.',
  'history.sum-pain-same': 'Schmerz am Morgen {joint:in}: jedes Mal {low}.',
  'history.sum-pain': 'Schmerz am Morgen {joint:in}: von {low} bis {high}.',
  'history.picture-load': 'Gewicht: {title}',
  'history.picture-repetitions': 'Wiederholungen insgesamt: {title}',
  'history.picture-pain': 'Schmerz am Morgen, 0 bis 10: {joint:label}',
  'history.picture-is': 'Das Diagramm zeigt Tag für Tag, was in den Sätzen darüber steht.',
  'history.earlier': 'Die Wochen davor',
  'history.week': '{from} bis {to}: {about}',
  'history.week-sessions': { by: 'count', one: '1 Training', other: '{count} Trainings' },
  'history.week-mornings': { by: 'count', one: '1-mal Morgenfragen', other: '{count}-mal Morgenfragen' },
  'history.week-pain': 'Schmerz am Morgen {low} bis {high}',
  'history.none': 'Es ist noch nichts eingetragen. Es beginnt mit Ihrem ersten Training.',
  'history.session': 'Training',
  'history.easier-session': 'Leichteres Training',
  'history.test': 'Test',
  'history.morning': 'Morgenfragen',
  'history.pain-before': 'Schmerz davor',
  'history.pain-during': 'Stärkster Schmerz im Training',
  'history.pain-after': 'Schmerz danach',
  'history.pain-morning': 'Schmerz am Morgen',
  'history.flare': 'Schub',
  'history.not-counted': 'nicht gezählt',
  'history.what-next': 'Was das für {joint:your-accusative} bedeutet',
  'history.why': 'Warum',
} as const satisfies Same<typeof english>;
