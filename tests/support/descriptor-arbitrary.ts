/**
 * Generated inputs from a descriptor: everything the bounds let in, with the bounds themselves,
 * whole numbers and the far ends drawn often, because that is where sums break.
 */
import fc from 'fast-check';
import type { Field, NumberField } from '#core/calculations/describe.ts';
import { dayFromNumber } from '#core/time/day.ts';

/** Longest list made; a longer one costs time and shows nothing a shorter one does not. */
const longestList = 9;

const numberArbitrary = (field: NumberField): fc.Arbitrary<number> => {
  const { min, max, exclusiveMin, kind } = field;
  if (kind === 'integer') {
    const low = Math.ceil(min ?? Number.MIN_SAFE_INTEGER) + (exclusiveMin && Number.isInteger(min) ? 1 : 0);
    return fc.integer({ min: low, max: Math.floor(max ?? Number.MAX_SAFE_INTEGER) });
  }
  const bounds = {
    min: min ?? -Number.MAX_VALUE,
    max: max ?? Number.MAX_VALUE,
    minExcluded: exclusiveMin ?? false,
  };
  const anyDouble = fc.double({ ...bounds, noNaN: true }).map((value) => (value === 0 ? 0 : value));
  // People type whole and half numbers, and ties between those find faults that random doubles miss.
  const low = Math.max(Math.ceil((min ?? -1000) * 2), -20_000) + (exclusiveMin ? 1 : 0);
  const high = Math.min(Math.floor((max ?? 1000) * 2), 20_000);
  const ends = [min, max].filter((end) => end !== undefined && !(exclusiveMin && end === min)) as number[];
  return fc.oneof(
    { weight: 4, arbitrary: anyDouble },
    ...(low <= high
      ? [{ weight: 4, arbitrary: fc.integer({ min: low, max: high }).map((half) => half / 2) }]
      : []),
    ...(ends.length > 0 ? [{ weight: 1, arbitrary: fc.constantFrom(...ends) }] : []),
  );
};

const plainArbitrary = (field: Field): fc.Arbitrary<unknown> => {
  switch (field.kind) {
    case 'number':
    case 'integer':
      return numberArbitrary(field);
    case 'enum':
      return fc.constantFrom(...field.values);
    case 'flag':
      return fc.boolean();
    case 'text':
      // Blanks alone are the same as nothing.
      return fc
        .string({ minLength: field.minLength ?? 0, maxLength: Math.min(field.maxLength, 40) })
        .filter((text) => text === '' || text.trim() !== '');
    case 'day':
      return fc.integer({ min: 0, max: 73_000 }).map(dayFromNumber);
    case 'date-time':
      return fc.integer({ min: 0, max: 73_000 }).map((day) => `${dayFromNumber(day)}T10:30`);
    case 'list': {
      const minLength = field.minItems ?? 0;
      const maxLength = Math.max(minLength, Math.min(field.maxItems ?? longestList, longestList));
      return fc.array(fieldArbitrary(field.of), { minLength, maxLength });
    }
    case 'record':
      return inputArbitrary(field.fields);
  }
};

const fieldArbitrary = (field: Field): fc.Arbitrary<unknown> => {
  const choices: fc.WeightedArbitrary<unknown>[] = [{ weight: 5, arbitrary: plainArbitrary(field) }];
  if (field.also?.length) choices.push({ weight: 1, arbitrary: fc.constantFrom(...field.also) });
  if (field.nullable) choices.push({ weight: 1, arbitrary: fc.constant(null) });
  return fc.oneof(...choices);
};

export const inputArbitrary = (fields: readonly Field[]): fc.Arbitrary<Record<string, unknown>> =>
  fc.record(Object.fromEntries(fields.map((field) => [field.name, fieldArbitrary(field)])), {
    requiredKeys: fields.filter((field) => !field.optional).map((field) => field.name),
    noNullPrototype: true,
  });
