/**
 * Every sentence a patient reads, as data: key and text. Nobody has reviewed them yet;
 * a clinic reviews them before use. `say` fills in the braces.
 */

import type { accountWords } from '#messages/en/pages/account.ts';
import type { beforeVisitWords } from '#messages/en/pages/before-visit.ts';
import { careWords } from '#messages/en/pages/care.ts';
import type { handoutWords } from '#messages/en/pages/handout.ts';
import type { historyWords } from '#messages/en/pages/history.ts';
import { morningWords } from '#messages/en/pages/morning.ts';
import { ownPageWords } from '#messages/en/pages/own-page.ts';
import { questionWords } from '#messages/en/pages/questions.ts';
import { savingWords } from '#messages/en/pages/saving.ts';
import type { seldomWords } from '#messages/en/pages/seldom.ts';
import { sessionWords } from '#messages/en/pages/session.ts';
import type { signInWords } from '#messages/en/pages/sign-in.ts';
import { todayWords } from '#messages/en/pages/today.ts';
import type { writeWords } from '#messages/en/pages/write.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { taughtWord } from '#messages/taught.ts';
import type { Text } from '#messages/text.ts';

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

let spoken: LanguageTag = 'en';

/**
 * What the server sent, in the language spoken. Each page asks for it where it shows it; what is stored
 * and sent stays as it was made. A plain string, from a session begun before texts came in every
 * language, stays as it is.
 */
export const translate = (text: Text | string): string => (typeof text === 'string' ? text : text[spoken]);

/**
 * The words of another language, in this browser, for all that is shown from now on. Never called on
 * the server, where one process speaks to many people. What a language lacks stays English.
 */
export const setLanguage = (
  language: Readonly<Partial<Record<WordKey, string>>>,
  tag: LanguageTag = 'en',
): void => {
  messages = language;
  spoken = tag;
};

const plain: Readonly<Partial<Record<WordKey, string>>> = english;

/** A key that no file taught is a mistake in the page, so it stays visible as it is. */
const textOf = (key: WordKey): string => messages[key] ?? plain[key] ?? taughtWord(key) ?? key;

/** A brace without its value is a mistake in the page, so it stays visible as it is. */
export const t = (key: WordKey, values: Values = {}): string =>
  textOf(key).replace(/\{([a-z-]+)\}/g, (whole, name: string) => String(values[name] ?? whole));
