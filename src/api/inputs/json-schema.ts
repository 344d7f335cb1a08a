/** Turns the core's input descriptors into JSON Schema (draft 2020-12), for tools outside this project. */
import type { Field, NumberField } from '#core/describe.ts';

export type JsonSchema = { readonly [keyword: string]: unknown };

const numberKeywords = (field: NumberField): JsonSchema => ({
  type: field.kind,
  ...(field.min === undefined ? {} : { [field.exclusiveMin ? 'exclusiveMinimum' : 'minimum']: field.min }),
  ...(field.max === undefined ? {} : { maximum: field.max }),
  // JSON Schema has no word for units; extension keywords may be ignored by a validator.
  'x-unit': field.unit,
});

const plainKeywords = (field: Field): JsonSchema => {
  switch (field.kind) {
    case 'number':
    case 'integer':
      return numberKeywords(field);
    case 'enum':
      return { enum: field.values };
    case 'text':
      return { type: 'string', minLength: field.minLength ?? 0, maxLength: field.maxLength };
    case 'flag':
      return { type: 'boolean' };
    case 'list':
      return {
        type: 'array',
        items: fieldJsonSchema(field.of),
        ...(field.minItems === undefined ? {} : { minItems: field.minItems }),
        ...(field.maxItems === undefined ? {} : { maxItems: field.maxItems }),
      };
    case 'record':
      return objectKeywords(field.fields);
  }
};

/** One field; its absence is told by the record that holds it. */
export const fieldJsonSchema = (field: Field): JsonSchema => {
  const settings: JsonSchema[] = [plainKeywords(field)];
  if (field.also?.length) settings.push({ enum: field.also });
  if (field.nullable) settings.push({ type: 'null' });
  const schema = settings.length === 1 ? settings[0] : { anyOf: settings };
  return field.about ? { ...schema, description: field.about } : { ...schema };
};

const objectKeywords = (fields: readonly Field[]): JsonSchema => ({
  type: 'object',
  properties: Object.fromEntries(fields.map((field) => [field.name, fieldJsonSchema(field)])),
  required: fields.filter((field) => !field.optional).map((field) => field.name),
  additionalProperties: false,
});

export const inputJsonSchema = (fields: readonly Field[]): JsonSchema => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  ...objectKeywords(fields),
});
