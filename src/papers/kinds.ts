import { type LanguageTag, languages } from '#messages/languages.ts';

/** The papers there are. A kind is offered once it can be made, and not before. */
export const paperKinds = [
  'plan',
  'letter',
  'discharge',
  'self-management',
  'handover',
  'flare-note',
  'record',
] as const;
export type PaperKind = (typeof paperKinds)[number];

const everyTag: readonly LanguageTag[] = languages.map(({ tag }) => tag);

/** What goes to a colleague is in the language the record is kept in. */
export const languagesOfKind: Readonly<Record<PaperKind, readonly LanguageTag[]>> = {
  plan: everyTag,
  letter: everyTag,
  discharge: ['en'],
  'self-management': everyTag,
  handover: everyTag,
  'flare-note': everyTag,
  record: everyTag,
};
