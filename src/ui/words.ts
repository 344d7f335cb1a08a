/**
 * Every sentence a patient reads, as data: key and text. Nobody has reviewed them yet;
 * a clinic reviews them before use. `say` fills in the braces.
 */
import type { accountWords } from './words/account.ts';
import type { beforeVisitWords } from './words/before-visit.ts';
import { careWords } from './words/care.ts';
import type { handoutWords } from './words/handout.ts';
import type { historyWords } from './words/history.ts';
import { morningWords } from './words/morning.ts';
import { ownPageWords } from './words/own-page.ts';
import { questionWords } from './words/questions.ts';
import { savingWords } from './words/saving.ts';
import type { seldomWords } from './words/seldom.ts';
import { sessionWords } from './words/session.ts';
import type { signInWords } from './words/sign-in.ts';
import { taughtWord } from './words/taught.ts';
import { todayWords } from './words/today.ts';
import type { writeWords } from './words/write.ts';

export const english = {
  ...todayWords,
  ...ownPageWords,
  ...questionWords,
  ...sessionWords,
  ...careWords,
  ...morningWords,
  ...savingWords,
} as const;

export type WordKey =
  | keyof typeof english
  | keyof typeof accountWords
  | keyof typeof beforeVisitWords
  | keyof typeof handoutWords
  | keyof typeof historyWords
  | keyof typeof seldomWords
  | keyof typeof signInWords
  | keyof typeof writeWords;

type Values = Readonly<Record<string, string | number>>;

let messages: Readonly<Partial<Record<WordKey, string>>> = {};

type Translate = (text: string) => string;

const untranslated: Translate = (text) => text;

let translator = untranslated;

/**
 * A sentence the core made, or a title or reason that came with the record, in the language spoken. Each
 * page tells it where it shows it; what is kept and sent stays as it was made.
 */
export const translate: Translate = (text) => translator(text);

/**
 * The words of another language, in this browser, for all that is shown from now on. Never called on
 * the server, where one process speaks to many people. What a language lacks stays English.
 */
export const setLanguage = (
  language: Readonly<Partial<Record<WordKey, string>>>,
  translate: Translate = untranslated,
): void => {
  messages = language;
  translator = translate;
};

const plain: Readonly<Partial<Record<WordKey, string>>> = english;

/** A key that no file taught is a mistake in the page, so it stays visible as it is. */
const textOf = (key: WordKey): string => messages[key] ?? plain[key] ?? taughtWord(key) ?? key;

/** A brace without its value is a mistake in the page, so it stays visible as it is. */
export const t = (key: WordKey, values: Values = {}): string =>
  textOf(key).replace(/\{([a-z-]+)\}/g, (whole, name: string) => String(values[name] ?? whole));
