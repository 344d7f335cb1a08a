/** Why the server did not do what a patient asked for. */
import type { refusals } from './en/sentences/refusals.ts';
import { textOf } from './every-language.ts';
import type { Args } from './sentence.ts';
import type { Text } from './text.ts';

export type RefusalKey = keyof typeof refusals;

export const refusalText = <K extends RefusalKey>(
  key: K,
  ...values: Args<(typeof refusals)[K], Text>
): Text => textOf('refusals', key, ...values);
