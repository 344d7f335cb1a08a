/** Texts that the server still sends in English alone, told in another language. Leaves with the last of them. */
import type { LanguageTag } from '#messages/languages.ts';

export const stringsIn = async (tag: LanguageTag): Promise<((text: string) => string) | undefined> =>
  tag === 'de' ? (await import('./german.ts')).translateToGerman : undefined;
