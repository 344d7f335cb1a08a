/** Every sentence a patient reads, whichever page carries it. Nobody has reviewed them yet. */
import { english, type WordKey } from '../words.ts';
import { accountWords } from './account.ts';
import { beforeVisitWords } from './before-visit.ts';
import { handoutWords } from './handout.ts';
import { historyWords } from './history.ts';
import { seldomWords } from './seldom.ts';
import { signInWords } from './sign-in.ts';
import { writeWords } from './write.ts';

export const everyWord: Readonly<Record<WordKey, string>> = {
  ...english,
  ...accountWords,
  ...beforeVisitWords,
  ...handoutWords,
  ...historyWords,
  ...seldomWords,
  ...signInWords,
  ...writeWords,
};
