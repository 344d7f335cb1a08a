/** Small made-up calculations with every kind of field, for tests of the desk and of the input schemas. */
import { type AnyCalculation, calculation } from '#core/calculations/calculation.ts';
import { answer, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';

/** Of no bibliography, which the type would refuse. */
const citations = [
  { source: 'made-up', locator: 'table 1', mark: 'design', remark: 'only for tests' },
] as const as readonly unknown[] as readonly Citation[];

export const everyKind = calculation({
  id: 'every-kind',
  title: 'Every kind of field',
  area: 'strength',
  input: [
    { name: 'loadKg', kind: 'number', unit: 'kg', min: 0, max: 500, exclusiveMin: true },
    { name: 'repetitions', kind: 'integer', unit: '1', min: 1, max: 30 },
    { name: 'sex', kind: 'enum', values: ['female', 'male'] },
    { name: 'isSeated', kind: 'flag', optional: true },
    {
      name: 'pain',
      kind: 'integer',
      unit: '{score}',
      min: 0,
      max: 10,
      nullable: true,
      also: ['not-applicable'],
    },
    {
      name: 'readings',
      kind: 'list',
      of: { name: 'reading', kind: 'number', unit: 'mm[Hg]', min: 0, max: 300 },
      minItems: 1,
      maxItems: 3,
    },
    {
      name: 'body',
      kind: 'record',
      optional: true,
      fields: [{ name: 'massKg', kind: 'number', unit: 'kg', min: 20, max: 400 }],
    },
    { name: 'remark', kind: 'text', minLength: 1, maxLength: 20, optional: true },
  ],
  result: [{ name: 'echo', unit: '1' }],
  citations,
  consistent: ({ loadKg, repetitions }) =>
    loadKg > 400 && repetitions > 20
      ? [{ field: 'input.repetitions', code: 'inconsistent', reason: 'Nobody lifts that so often.' }]
      : [],
  calculate: ({ loadKg, repetitions, pain }) =>
    answer({ echo: loadKg * repetitions, pain }, [{ code: 'made-up', text: 'Only for tests.' }]),
  example: { loadKg: 20, repetitions: 10, sex: 'female', pain: null, readings: [120] },
});

/** A row with defects of its own: it throws, or answers with what JSON cannot hold. */
export const broken = calculation({
  id: 'broken',
  title: 'A calculation with a fault',
  area: 'strength',
  input: [
    { name: 'fault', kind: 'enum', values: ['throws', 'not-a-number', 'infinite', 'minus-zero', 'refuses'] },
  ],
  result: [{ name: 'value', unit: '1' }],
  citations,
  calculate: ({ fault }) => {
    if (fault === 'throws') throw new Error('a fault in the sum');
    if (fault === 'refuses') return refuse('fault', 'outside-validity', 'Choose another fault.');
    return answer({
      inner: [{ value: fault === 'not-a-number' ? Number.NaN : fault === 'infinite' ? 1 / 0 : -0 }],
    });
  },
  example: { fault: 'minus-zero' },
});

const rows: readonly AnyCalculation[] = [everyKind, broken];
export const lookup = (id: string): AnyCalculation | undefined => rows.find((row) => row.id === id);
