/**
 * Every sentence a patient reads, as data: key, language, text, and who reviewed it. Nobody has yet;
 * a clinic reviews them before use. `say` fills in the braces.
 */
import { accountWords } from './words/account.ts';
import { beforeVisitWords } from './words/before-visit.ts';
import { careWords } from './words/care.ts';
import { handoutWords } from './words/handout.ts';
import { historyWords } from './words/history.ts';
import { morningWords } from './words/morning.ts';
import { ownPageWords } from './words/own-page.ts';
import { questionWords } from './words/questions.ts';
import { savingWords } from './words/saving.ts';
import { sessionWords } from './words/session.ts';
import { todayWords } from './words/today.ts';
import { writeWords } from './words/write.ts';

const english = {
  ...todayWords,
  ...ownPageWords,
  ...questionWords,
  ...sessionWords,
  ...careWords,
  ...morningWords,
  ...savingWords,
  ...historyWords,
  ...handoutWords,
  ...accountWords,
  ...beforeVisitWords,
  ...writeWords,
} as const;

export type WordKey = keyof typeof english;

export interface Word {
  readonly key: WordKey;
  readonly language: 'en';
  readonly text: string;
  /** Name of the clinician who approved the wording; null until someone has. */
  readonly reviewer: string | null;
}

export const words: readonly Word[] = Object.entries(english).map(([key, text]) => ({
  key: key as WordKey,
  language: 'en',
  text,
  reviewer: null,
}));

type Values = Readonly<Record<string, string | number>>;

let spoken: Readonly<Partial<Record<WordKey, string>>> = {};

/**
 * The words of another language, in this browser, for all that is shown from now on. Never called on
 * the server, where one process speaks to many people. What a language lacks stays English.
 */
export const speak = (language: Readonly<Partial<Record<WordKey, string>>>): void => {
  spoken = language;
};

/** A brace without its value is a mistake in the page, so it stays visible as it is. */
export const say = (key: WordKey, values: Values = {}): string =>
  (spoken[key] ?? english[key]).replace(/\{([a-z-]+)\}/g, (whole, name: string) =>
    String(values[name] ?? whole),
  );
