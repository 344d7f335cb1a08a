import { type LanguageTag, languages } from '#messages/languages.ts';

/** The papers there are. A kind is offered once it can be made, and not before. */
export const paperKinds = ['plan', 'letter'] as const;
export type PaperKind = (typeof paperKinds)[number];

/** A letter goes to a colleague in the language the record is kept in. */
export const languagesOfKind: Readonly<Record<PaperKind, readonly LanguageTag[]>> = {
  plan: languages.map(({ tag }) => tag),
  letter: ['en'],
};
