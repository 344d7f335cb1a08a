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
  'handout.do-reserve': {
    by: 'count',
    one: 'Stop when you could still do 1 more repetition well.',
    other: 'Stop when you could still do {count} more repetitions well.',
  },
  'handout.do-last': 'Go on until you could not do another repetition well.',
  'handout.do-tempo': '{seconds} seconds for each repetition.',
  'handout.do-cuff-minutes': {
    by: 'minutes',
    one: 'Cuff on for at most {minutes} minute, then take it off.',
    other: 'Cuff on for at most {minutes} minutes, then take it off.',
  },
  'handout.do-cuff-supine': 'Cuff {width} cm wide, lying down.',
  'handout.do-cuff-seated': 'Cuff {width} cm wide, sitting.',
  'handout.do-cuff-standing': 'Cuff {width} cm wide, standing.',
  'handout.do-inflated': 'The cuff stays inflated during the rests.',
  'handout.do-deflated': 'Let the air out during the rests.',
  'handout.do-no-pulse': 'If you feel no pulse beyond the cuff, take it off at once.',
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
