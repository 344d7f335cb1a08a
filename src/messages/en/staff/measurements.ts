/** Measurements: recording one, and all of them in words. */
import { sayIn } from '../../say.ts';

export const words = {
  'effusion.record': 'Record effusion',
  'last-of': 'Last {value} on {date}, {subject}. {min} to {max}',
  last: 'Last {value} on {date}. {min} to {max}',
  'record-kind': 'Record {kind}',
  'both-sides': 'both sides',
  'not-measured': 'not measured',
  'out-of-date': '{value} ({date}, out of date: measure again)',
  record: 'Record a measurement',
  effusion: 'Knee effusion',
  all: 'All measurements, newest first',
  'at-home': '{value} (answered at home)',
  'by-video': '{value} (by video)',
  'by-telephone': '{value} (by telephone)',
  unusual: '{value} (unusual, confirmed)',
  none: 'No measurement is recorded yet.',
} as const;

export const say = sayIn(words);
