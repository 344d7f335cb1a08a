/**
 * Turns the core's input descriptors into zod schemas. Forms, procedures and the desk all come
 * through here, so a bound is written once: in the descriptor.
 */
import { z } from 'zod';
import type { Field, InputOf, NumberField } from '#core/calculations/describe.ts';
import { isDateTime } from '#core/time/date-time.ts';
import { isDay } from '#core/time/day.ts';

const numberSchema = (field: NumberField): z.ZodType => {
  let schema = field.kind === 'integer' ? z.int() : z.number();
  if (field.min !== undefined) schema = field.exclusiveMin ? schema.gt(field.min) : schema.min(field.min);
  if (field.max !== undefined) schema = schema.max(field.max);
  // JSON can spell minus zero; no reading is minus zero, and some formulas would carry it through.
  return schema.overwrite((value) => (value === 0 ? 0 : value));
};

const plainSchema = (field: Field): z.ZodType => {
  switch (field.kind) {
    case 'number':
    case 'integer':
      return numberSchema(field);
    case 'enum':
      return z.enum(field.values as [string, ...string[]]);
    case 'text':
      // Blanks alone say nothing, and are refused where something is to be said.
      return z
        .string()
        .overwrite((text) => (text.trim() === '' ? '' : text))
        .min(field.minLength ?? 0)
        .max(field.maxLength);
    case 'day':
      return z.string().refine(isDay);
    case 'date-time':
      return z.string().refine((text) => isDateTime(text, field.mayLackTime ?? false));
    case 'flag':
      return z.boolean();
    case 'list': {
      let schema = z.array(fieldSchema(field.of));
      if (field.minItems !== undefined) schema = schema.min(field.minItems);
      if (field.maxItems !== undefined) schema = schema.max(field.maxItems);
      return schema;
    }
    case 'record':
      return objectSchema(field.fields);
  }
};

/** One field with its further literals, null and absence, in that order of wrapping. */
const fieldSchema = (field: Field): z.ZodType => {
  let schema = plainSchema(field);
  if (field.also?.length) schema = z.union([schema, z.enum(field.also as [string, ...string[]])]);
  if (field.nullable) schema = schema.nullable();
  return field.optional ? schema.optional() : schema;
};

const objectSchema = (fields: readonly Field[]) =>
  z.strictObject(Object.fromEntries(fields.map((field) => [field.name, fieldSchema(field)])));

const compiled = new WeakMap<readonly Field[], z.ZodType>();

/** The schema of a whole input. Unknown fields are refused. Built once per descriptor. */
export const inputSchema = <const F extends readonly Field[]>(fields: F): z.ZodType<InputOf<F>> => {
  const known = compiled.get(fields);
  if (known) return known as z.ZodType<InputOf<F>>;
  const schema = objectSchema(fields);
  compiled.set(fields, schema);
  return schema as unknown as z.ZodType<InputOf<F>>;
};
