/** What a person chose on this phone: language, unit, size of the text, sound, what is heard. Kept in cookies, so that the server's first page agrees. */

import { type LanguageTag, languages } from '#messages/languages.ts';
import { textSizeCookie } from '#ui/language/text-size.ts';
import type { WeightUnit } from '#ui/language/weight-text.ts';

export const sounds = ['none', 'buzz', 'tone'] as const;
export type Sound = (typeof sounds)[number];

export interface Chosen {
  readonly language: LanguageTag;
  readonly unit: WeightUnit;
}

export const cookieNames = {
  language: 'loadgate-language',
  unit: 'loadgate-unit',
  sound: 'loadgate-sound',
  text: textSizeCookie,
  aloud: 'loadgate-aloud',
  byEar: 'loadgate-by-ear',
} as const;

/** The first language somebody asks for that there is; a region counts for nothing. English without one. */
const languageOf = (asked: readonly string[]): LanguageTag =>
  asked
    .map((one) => one.split('-')[0]?.toLowerCase())
    .map((wanted) => languages.find(({ tag }) => tag === wanted)?.tag)
    .find((tag) => tag !== undefined) ?? 'en';

/** What was chosen; where nothing was, the languages the browser asks for, the most wanted first. */
export const chosenFrom = (read: (name: string) => string | undefined, asked: readonly string[]): Chosen => ({
  language: languages.find(({ tag }) => tag === read(cookieNames.language))?.tag ?? languageOf(asked),
  unit: read(cookieNames.unit) === 'lb' ? 'lb' : 'kg',
});

/** "de-AT,de;q=0.9,en;q=0.5" as a list, the most wanted first (RFC 9110, 12.5.4 and 12.4.2). */
export const languagesAsked = (header: string): readonly string[] =>
  header
    .split(',')
    .map((part) => {
      const [tag = '', ...parameters] = part.trim().split(/\s*;\s*/);
      const weight = parameters.find((one) => one.startsWith('q='))?.slice(2);
      return { tag, weight: weight === undefined ? 1 : Number(weight) };
    })
    .filter(({ tag, weight }) => tag !== '' && weight > 0)
    .sort((a, b) => b.weight - a.weight)
    .map(({ tag }) => tag);

/** A cookie of this page, in a browser. */
const cookie = (name: string): string | undefined =>
  document.cookie
    .split('; ')
    .find((one) => one.startsWith(`${name}=`))
    ?.slice(name.length + 1);

/** The same in a browser, as the server read it from the request. */
export const chosenHere = (): Chosen => chosenFrom(cookie, navigator.languages);

const yearSeconds = 365 * 24 * 3600;

/** Heard by what shows a choice elsewhere on the page. */
export const chosenEvent = 'loadgate-chosen';

export const choose = (name: keyof typeof cookieNames, value: string): void => {
  // biome-ignore lint/suspicious/noDocumentCookie: the store for cookies is not in every browser a patient has.
  document.cookie = `${cookieNames[name]}=${value}; path=/; max-age=${yearSeconds}; samesite=lax`;
  window.dispatchEvent(new Event(chosenEvent));
};

/** What is off until somebody wants it. */
export type OnOrOffName = 'aloud' | 'byEar';

export const isChosen = (name: OnOrOffName): boolean => cookie(cookieNames[name]) === 'yes';

export const chosenSound = (): Sound => sounds.find((sound) => sound === cookie(cookieNames.sound)) ?? 'buzz';
