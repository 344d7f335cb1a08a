/** What both point lists share: yes-or-no conditions, and the note that a low total clears nothing. */
import type { FlagField } from '#core/calculations/describe.ts';
import type { Note } from '#core/outcome.ts';

export const flag = <N extends string>(name: N, about: string) =>
  ({ name, kind: 'flag', about }) as const satisfies FlagField;

export const clearsNothing: Note = {
  code: 'clears-nothing',
  text: 'A low total clears nothing: each stop of the screening stands on its own.',
};
