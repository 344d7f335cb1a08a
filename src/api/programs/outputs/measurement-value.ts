/**
 * A measurement as its kind describes it. What was recorded is told even where a bound has become narrower since, so
 * bounds are for what is entered and do not stand here.
 */
import { z } from 'zod';
import { measurementForms } from '#core/assessment/measurements/measurement-fields.ts';
import type { Field } from '#core/calculations/describe.ts';

const plainOutput = (field: Field): z.ZodType => {
  switch (field.kind) {
    case 'number':
    case 'integer':
      return z.number().describe(field.unit === '1' ? 'Of no unit.' : `UCUM ${field.unit}`);
    case 'enum':
      return z.enum(field.values as [string, ...string[]]);
    case 'flag':
      return z.boolean();
    case 'list':
      return z.array(fieldOutput(field.of));
    case 'record':
      return objectOutput(field.fields);
    default:
      return z.string();
  }
};

const fieldOutput = (field: Field): z.ZodType => {
  let output = plainOutput(field);
  if (field.also?.length) output = z.union([output, z.enum(field.also as [string, ...string[]])]);
  if (field.nullable) output = output.nullable();
  return field.optional ? output.optional() : output;
};

const objectOutput = (fields: readonly Field[]) =>
  z.object(Object.fromEntries(fields.map((field) => [field.name, fieldOutput(field)])));

export const measurementKinds = measurementForms.map(({ kind }) => kind) as [string, ...string[]];

export const measurementValue = z.union(measurementForms.map(({ fields }) => objectOutput(fields)));
