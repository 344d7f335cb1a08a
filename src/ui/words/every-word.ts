/** Every sentence a patient reads, whichever page carries it, with who reviewed it: nobody yet. */
import { english, type WordKey } from '../words.ts';
import { accountWords } from './account.ts';
import { beforeVisitWords } from './before-visit.ts';
import { handoutWords } from './handout.ts';
import { historyWords } from './history.ts';
import { seldomWords } from './seldom.ts';
import { signInWords } from './sign-in.ts';
import { writeWords } from './write.ts';

export interface Word {
  readonly key: WordKey;
  readonly language: 'en';
  readonly text: string;
  /** Name of the clinician who approved the wording; null until someone has. */
  readonly reviewer: string | null;
}

export const words: readonly Word[] = Object.entries({
  ...english,
  ...accountWords,
  ...beforeVisitWords,
  ...handoutWords,
  ...historyWords,
  ...seldomWords,
  ...signInWords,
  ...writeWords,
}).map(([key, text]) => ({
  key: key as WordKey,
  language: 'en',
  text,
  reviewer: null,
}));
