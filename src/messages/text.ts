/** A text in every language. The server sends it whole; the page shows the one that was chosen. */
import { type LanguageTag, languages } from './languages.ts';

export type Text = Readonly<Record<LanguageTag, string>>;

export const textBy = (render: (tag: LanguageTag) => string): Text =>
  Object.freeze(
    Object.fromEntries(languages.map(({ tag }) => [tag, render(tag)])) as Record<LanguageTag, string>,
  );

/** What a person typed, a name or a number of a telephone: the same whatever the language. */
export const asTyped = (text: string): Text => textBy(() => text);

export const joined = (texts: readonly Text[], between: string): Text =>
  textBy((tag) => texts.map((text) => text[tag]).join(between));
