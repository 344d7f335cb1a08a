import { describe, expect, it } from 'vitest';
import { inputSchema } from '#api/inputs/from-descriptor.ts';
import { inputArbitrary } from '#tests/support/descriptor-arbitrary.ts';
import { everyKind } from '#tests/support/desk-rows.ts';
import { holds } from '#tests/support/holds.ts';

describe('one descriptor makes the schema of forms, procedures and desk', () => {
  it('lets in every input its bounds allow, unchanged', () => {
    holds(inputArbitrary(everyKind.input), (input) => {
      const parsed = inputSchema(everyKind.input).safeParse(input);
      expect(parsed.error).toBeUndefined();
      expect(parsed.data).toEqual(input);
    });
  });

  it('reads minus zero as zero', () => {
    const input = { ...everyKind.example, readings: [-0] };
    expect(Object.is(inputSchema(everyKind.input).parse(input).readings[0], 0)).toBe(true);
  });

  it('is built once for a descriptor', () => {
    expect(inputSchema(everyKind.input)).toBe(inputSchema(everyKind.input));
  });
});
