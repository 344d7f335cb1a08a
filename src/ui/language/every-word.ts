/** Every sentence a patient reads, whichever page carries it. Nobody has reviewed them yet. */

import { accountWords } from '#messages/en/pages/account.ts';
import { beforeVisitWords } from '#messages/en/pages/before-visit.ts';
import { handoutWords } from '#messages/en/pages/handout.ts';
import { historyWords } from '#messages/en/pages/history.ts';
import { seldomWords } from '#messages/en/pages/seldom.ts';
import { signInWords } from '#messages/en/pages/sign-in.ts';
import { writeWords } from '#messages/en/pages/write.ts';
import { english, type WordKey } from './words.ts';

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
