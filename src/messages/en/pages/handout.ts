import { words as dose } from './dose.ts';
import { words as warningSigns } from './warning-signs.ts';

/** The plan on one page, to read or to print. */
export const words = {
  ...dose,
  ...warningSigns,
  'handout.title': 'My plan on one page',
  'handout.for': '{name}, as of {date}',
  'handout.print': 'This week to print (PDF)',
  'handout.print-large': 'In large type (PDF)',
  'handout.none': 'Your physio has not set any exercises for you yet.',
  'handout.days': 'On {days}.',
  'handout.every-day': 'On any day. No days are set.',
  'handout.no-days': 'Not on any day for now.',
  'handout.easier': 'Easier session, for a bad day: {dose}.',
  'handout.easier-now': 'For now do the easier session. Your page for today says when it is over.',
  'handout.whole': 'The whole session, once that is over: {dose}.',
  'handout.resting': 'Leave this one out for now. Your page for today says when it is back.',
  'handout.stop': 'Stop and call',
  'handout.stop-call':
    'With a warning sign stop at once. In an emergency call {emergency}, otherwise ring {clinic}: {phone}.',
  'handout.signs': 'The warning signs',
  'handout.protein': 'Protein',
  'handout.protein-figures': {
    by: 'meals',
    one: '{low} to {high} g of protein a day, in {meals} meal.',
    other: '{low} to {high} g of protein a day, spread over {meals} meals.',
  },
  'handout.energy': 'About {kcal} kcal a day more than you need to keep your weight.',
  'handout.protein-about':
    'Set by {name}. Tell your clinic before you go by it if you have kidney trouble, are pregnant, or lose weight without trying.',
} as const;
