/** What a low-load dose is made from. Everything left out is filled from the clinic's choices. */

import {
  availableField,
  equationField,
  loadField,
  repetitionsField,
} from '#core/assessment/strength/fields.ts';
import type { Field, InputOf } from '#core/calculations/describe.ts';
import type { Refusal } from '#core/outcome.ts';

const optionalWhole = <N extends string>(name: N, unit: string, min: number, max: number, about: string) =>
  ({ name, kind: 'integer', unit, min, max, optional: true, about }) as const satisfies Field;

export const lowLoadInput = [
  {
    name: 'test',
    kind: 'record',
    optional: true,
    about: 'Repetitions to failure at a load. Give this or a known maximum.',
    fields: [loadField('loadKg', 'Load of the test.'), repetitionsField],
  },
  { ...loadField('knownOneRepMaxKg', 'A maximum the clinician already has.'), optional: true },
  { ...equationField, optional: true },
  { name: 'ageYears', kind: 'integer', unit: 'a', min: 18, max: 120, optional: true },
  availableField,
  {
    name: 'percent',
    kind: 'number',
    unit: '%',
    min: 1,
    max: 100,
    optional: true,
    about: 'Of the maximum; the clinic sets floor and top.',
  },
  {
    name: 'neverAbove',
    kind: 'flag',
    optional: true,
    about: 'Yes when left out: the heaviest owned load not above the target.',
  },
  { ...loadField('loadCeilingKg', 'A limit on the load set by a clinician.'), optional: true },
  optionalWhole('sets', '1', 1, 5, 'Sets.'),
  optionalWhole('reserve', '1', 0, 3, 'Repetitions in reserve at the end of a set.'),
  optionalWhole('restSeconds', 's', 30, 300, 'Rest between sets.'),
  {
    name: 'secondsPerRepetition',
    kind: 'number',
    unit: 's',
    min: 2,
    max: 8,
    optional: true,
    about: 'Lifting and lowering together.',
  },
  optionalWhole('repetitionsLow', '1', 1, 40, 'Low end of the band.'),
  optionalWhole('repetitionsHigh', '1', 1, 60, 'High end of the band.'),
  optionalWhole('sessionsPerWeek', '1', 1, 4, 'Sessions a week.'),
] as const satisfies readonly Field[];

export type LowLoadInput = InputOf<typeof lowLoadInput>;

export const lowLoadConflicts = (input: LowLoadInput): readonly Refusal[] => {
  const hasTest = input.test !== undefined;
  const hasKnown = input.knownOneRepMaxKg !== undefined;
  if (hasTest !== hasKnown) return [];
  const reason = hasTest
    ? 'Give either a test or a known maximum, not both: they may disagree.'
    : 'Give a repetitions-to-failure test, or a maximum already known.';
  return [{ field: 'input.test', code: hasTest ? 'inconsistent' : 'missing', reason }];
};
