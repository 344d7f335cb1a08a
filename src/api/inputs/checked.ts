/** Descriptor to procedure input: what does not fit comes back as refusals, each saying how to put it right. */
import type { Field, InputOf } from '#core/describe.ts';
import type { Refusal } from '#core/outcome.ts';
import { refusedWith } from '../errors.ts';
import { inputSchema } from './from-descriptor.ts';
import { refusalsFromIssues } from './refusals.ts';

/** The value as its descriptor types it, or a refusal thrown at the border. */
export const checked = <const F extends readonly Field[]>(
  fields: F,
  value: unknown,
  consistent: (value: InputOf<F>) => readonly Refusal[] = () => [],
): InputOf<F> => {
  const parsed = inputSchema(fields).safeParse(value);
  if (!parsed.success) throw refusedWith(refusalsFromIssues(parsed.error.issues, fields, value));
  const refusals = consistent(parsed.data);
  if (refusals.length > 0) throw refusedWith(refusals);
  return parsed.data;
};
