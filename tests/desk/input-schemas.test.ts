import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inputSchema } from '#api/inputs/from-descriptor.ts';
import { inputJsonSchema } from '#api/inputs/json-schema.ts';
import { inputArbitrary } from '#tests/support/descriptor-arbitrary.ts';
import { everyKind } from '#tests/support/desk-rows.ts';

describe('one descriptor makes the schema of forms, procedures and desk', () => {
  it('lets in every input its bounds allow, unchanged', () => {
    fc.assert(
      fc.property(inputArbitrary(everyKind.input), (input) => {
        const parsed = inputSchema(everyKind.input).safeParse(input);
        expect(parsed.error).toBeUndefined();
        expect(parsed.data).toEqual(input);
      }),
      { seed: 20260131, numRuns: 10_000 },
    );
  });

  it('reads minus zero as zero', () => {
    const input = { ...everyKind.example, readings: [-0] };
    expect(Object.is(inputSchema(everyKind.input).parse(input).readings[0], 0)).toBe(true);
  });

  it('is built once for a descriptor', () => {
    expect(inputSchema(everyKind.input)).toBe(inputSchema(everyKind.input));
  });
});

describe('the JSON Schema of a descriptor says the same', () => {
  it('spells bounds, units, choices, null and absence', () => {
    expect(inputJsonSchema(everyKind.input)).toEqual({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      type: 'object',
      properties: {
        loadKg: { type: 'number', exclusiveMinimum: 0, maximum: 500, 'x-unit': 'kg' },
        repetitions: { type: 'integer', minimum: 1, maximum: 30, 'x-unit': '1' },
        sex: { enum: ['female', 'male'] },
        isSeated: { type: 'boolean' },
        pain: {
          anyOf: [
            { type: 'integer', minimum: 0, maximum: 10, 'x-unit': '{score}' },
            { enum: ['not-applicable'] },
            { type: 'null' },
          ],
        },
        readings: {
          type: 'array',
          items: { type: 'number', minimum: 0, maximum: 300, 'x-unit': 'mm[Hg]' },
          minItems: 1,
          maxItems: 3,
        },
        body: {
          type: 'object',
          properties: { massKg: { type: 'number', minimum: 20, maximum: 400, 'x-unit': 'kg' } },
          required: ['massKg'],
          additionalProperties: false,
        },
        remark: { type: 'string', minLength: 1, maxLength: 20 },
      },
      required: ['loadKg', 'repetitions', 'sex', 'pain', 'readings'],
      additionalProperties: false,
    });
  });
});
