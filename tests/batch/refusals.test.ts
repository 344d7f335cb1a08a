import { describe, expect, it } from 'vitest';
import { evaluate } from '#api/inputs/evaluate.ts';
import { everyKind } from '#tests/support/desk-rows.ts';

const fields: readonly [string, Record<string, unknown>, string, string, string][] = [
  ['a missing number', { loadKg: undefined }, 'input.loadKg', 'missing', 'Give loadKg: a number.'],
  ['a missing word', { sex: undefined }, 'input.sex', 'missing', 'Give sex: one of female, male.'],
  ['a number as text', { loadKg: '20' }, 'input.loadKg', 'wrong-type', 'loadKg is a number; this is text.'],
  [
    'null where no answer is no choice',
    { loadKg: null },
    'input.loadKg',
    'wrong-type',
    'loadKg is a number; this is null.',
  ],
  ['a bound that is itself refused', { loadKg: 0 }, 'input.loadKg', 'too-low', 'loadKg is above 0 kg.'],
  ['a negative load', { loadKg: -3 }, 'input.loadKg', 'too-low', 'loadKg is above 0 kg.'],
  ['a load over the bound', { loadKg: 500.1 }, 'input.loadKg', 'too-high', 'loadKg is at most 500 kg.'],
  [
    'half a repetition',
    { repetitions: 2.5 },
    'input.repetitions',
    'wrong-type',
    'repetitions is a whole number; this is a number with a fraction.',
  ],
  ['a word not listed', { sex: 'x' }, 'input.sex', 'not-listed', 'sex is one of female, male.'],
  [
    'a number for a word',
    { sex: 1 },
    'input.sex',
    'wrong-type',
    'sex is one of female, male; this is a number.',
  ],
  ['pain 11', { pain: 11 }, 'input.pain', 'too-high', 'pain is at most 10.'],
  [
    'a literal that is not among the further ones',
    { pain: 'bad' },
    'input.pain',
    'not-listed',
    'pain is a whole number, not-applicable or null.',
  ],
  [
    'true for a score',
    { pain: true },
    'input.pain',
    'wrong-type',
    'pain is a whole number, not-applicable or null; this is a boolean.',
  ],
  ['an empty list', { readings: [] }, 'input.readings', 'too-low', 'readings has at least 1 item.'],
  [
    'too long a list',
    { readings: [1, 2, 3, 4] },
    'input.readings',
    'too-high',
    'readings has at most 3 items.',
  ],
  ['one bad item', { readings: [1, -2] }, 'input.readings[1]', 'too-low', 'readings[1] is at least 0 mmHg.'],
  [
    'an unknown field',
    { extra: 1 },
    'input.extra',
    'unknown-field',
    'Leave out extra: it is not a field of input.',
  ],
  ['a missing field inside', { body: {} }, 'input.body.massKg', 'missing', 'Give massKg: a number.'],
  [
    'too much text',
    { remark: 'x'.repeat(21) },
    'input.remark',
    'too-high',
    'remark has at most 20 characters.',
  ],
  [
    'null for a flag',
    { isSeated: null },
    'input.isSeated',
    'wrong-type',
    'isSeated is true or false; this is null.',
  ],
  [
    'fields that contradict',
    { loadKg: 450, repetitions: 25 },
    'input.repetitions',
    'inconsistent',
    'Nobody lifts that so often.',
  ],
];

describe('an input is refused by its field, with a code and a sentence that says how to put it right', () => {
  it.each(fields)('%s', (_, changes, field, code, reason) => {
    const input = JSON.parse(JSON.stringify({ ...everyKind.example, ...changes }));
    expect(evaluate(everyKind, input)).toEqual({ ok: false, refused: [{ field, code, reason }] });
  });
});
