/** What a person chose on this phone: language, unit, sound. Kept in cookies, so that the server's first page agrees. */

import { type LanguageTag, languages } from '#messages/languages.ts';
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
} as const;

export const chosenFrom = (read: (name: string) => string | undefined): Chosen => ({
  language: languages.find(({ tag }) => tag === read(cookieNames.language))?.tag ?? 'en',
  unit: read(cookieNames.unit) === 'lb' ? 'lb' : 'kg',
});

/** A cookie of this page, in a browser. */
export const cookie = (name: string): string | undefined =>
  document.cookie
    .split('; ')
    .find((one) => one.startsWith(`${name}=`))
    ?.slice(name.length + 1);

const yearSeconds = 365 * 24 * 3600;

export const choose = (name: keyof typeof cookieNames, value: string): void => {
  // biome-ignore lint/suspicious/noDocumentCookie: the store for cookies is not in every browser a patient has.
  document.cookie = `${cookieNames[name]}=${value}; path=/; max-age=${yearSeconds}; samesite=lax`;
};

export const chosenSound = (): Sound => sounds.find((sound) => sound === cookie(cookieNames.sound)) ?? 'buzz';
