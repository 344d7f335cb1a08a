/** To whom a letter goes, and in which language: the descriptors with the languages we have. */
import type { Field } from '#core/calculations/describe.ts';
import { addresseeFields } from '#core/episode/letters/letter.ts';
import { languages } from '#messages/languages.ts';

export const letterFields = [
  ...addresseeFields,
  {
    name: 'language',
    kind: 'enum',
    values: languages.map(({ tag }) => tag),
    about: 'Language of the letter',
  },
] as const satisfies readonly Field[];
