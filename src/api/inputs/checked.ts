/** Descriptor to procedure input: what does not fit comes back as refusals, each saying how to put it right. */
import type { Field, InputOf } from '#core/calculations/describe.ts';
import type { Refusal } from '#core/outcome.ts';
import { refusedWith } from '../errors.ts';
import { inputSchema } from './from-descriptor.ts';
import { refusalsFromIssues } from './refusals.ts';

/** A name such as a field of ours has. */
const fieldName = /^input\.[a-z][A-Za-z0-9]{0,30}$/;

/** A field nobody knows was named by whoever sent it; anything but a plain name is not repeated. */
const unnamed = (refusal: Refusal): Refusal =>
  refusal.code === 'unknown-field'
    ? {
        ...refusal,
        field: fieldName.test(refusal.field) ? refusal.field : 'input',
        reason: 'A field was sent that is not known here. Load the page again.',
      }
    : refusal;

/** The value as its descriptor types it, or a refusal thrown at the border. */
export const checked = <const F extends readonly Field[]>(
  fields: F,
  value: unknown,
  consistent: (value: InputOf<F>) => readonly Refusal[] = () => [],
): InputOf<F> => {
  const parsed = inputSchema(fields).safeParse(value);
  if (!parsed.success) throw refusedWith(refusalsFromIssues(parsed.error.issues, fields, value).map(unnamed));
  const refusals = consistent(parsed.data);
  if (refusals.length > 0) throw refusedWith(refusals);
  return parsed.data;
};
