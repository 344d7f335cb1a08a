/** The families of warning signs in every language, for whoever approves the words. */
import type { SignFamily } from '#core/danger/signs-asked.ts';
import type { words as english } from './en/pages/warning-signs.ts';
import { type LanguageTag, languages } from './languages.ts';
import type { Same } from './sentence.ts';
import { type Text, textBy } from './text.ts';

type Words = Same<typeof english>;

const load = async ({ tag }: (typeof languages)[number]) => {
  const { words }: { readonly words: Words } = await import(`./${tag}/pages/warning-signs.ts`);
  return [tag, words] as const;
};

const words = Object.fromEntries(await Promise.all(languages.map(load))) as Readonly<
  Record<LanguageTag, Words>
>;

export const familyText = (family: SignFamily): Text =>
  textBy((tag) => String(words[tag][`family.${family}`]));
