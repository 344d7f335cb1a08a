import { words as dose } from './dose.ts';
import { words as warningSigns } from './warning-signs.ts';

/** The plan on one page, to read or to print. */
export const words = {
  ...dose,
  ...warningSigns,
  'handout.title': 'My plan on one page',
  'handout.for': '{name}, as of {date}',
  'handout.print': 'Print this page',
  'handout.none': 'Your physio has not set any exercises for you yet.',
  'handout.days': 'On {days}.',
  'handout.every-day': 'On any day. No days are set.',
  'handout.no-days': 'On no day for now.',
  'handout.easier': 'Easier session, for a bad day: {dose}.',
  'handout.resting': 'Leave this one out for now. Your page for today says when it is back.',
  'handout.keep': 'Keep in mind',
  'handout.stop': 'Stop and call if you have one of these',
  'handout.stop-call': 'Stop at once. In an emergency call {emergency}, otherwise ring {clinic}: {phone}.',
} as const;
