/** Why sessions are counted neither way, in words. */
import { listed } from '../plain-words.ts';
import type { LeftOutCount } from './answers-by-dose.ts';
import type { LeftOut } from './morning-answer.ts';

const leftOutWords: Readonly<Record<LeftOut, string>> = {
  flare: 'in a flare',
  'no-answer': 'without a full answer the next morning',
  'morning-to-come': 'whose next morning is still to come',
  'usual-not-set': 'with no usual pain set',
  'another-session': 'entered late, or one of two on a day',
  'time-in-doubt': 'whose time may be wrong',
  'more-done': 'in which more was done than planned, or that was not answered',
  'dose-not-known': 'whose dose is not known',
  'nothing-done': 'in which nothing of it was done',
  'joint-not-loaded': 'that did not load the joint',
};

/** One sentence, or none where every session was counted. */
export const leftOutInWords = (leftOut: readonly LeftOutCount[]): readonly string[] => {
  const parts = leftOut.map(({ why, sessions }) => `${sessions} ${leftOutWords[why]}`);
  return parts.length > 0 ? [`Not counted: ${listed(parts, parts.length)}.`] : [];
};
