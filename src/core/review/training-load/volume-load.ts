/**
 * Volume load of a session: repetitions × kg, summed; with it the mean load of a repetition. A count
 * of work, blind to effort: 30 easy repetitions weigh as much as 30 to failure. One set whose count
 * or load is not known makes the sum unknown; it is never taken as zero.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Outcome } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';

export interface VolumeLoad {
  /** Null when any set lacks its count or load. */
  readonly volumeLoadKg: number | null;
  readonly repetitions: number | null;
  /** Null when unknown or when no repetition was done. */
  readonly meanLoadKg: number | null;
}

export const workedTable = (locator: string): Citation => ({
  source: 'military-health-table',
  locator: `table 1, ${locator}`,
  mark: 'seen',
  remark: 'A formula with a worked example; it drives no decision here.',
});

export const volumeLoad = (input: {
  readonly sets: readonly { readonly repetitions: number | null; readonly loadKg: number | null }[];
}): Outcome<VolumeLoad> => {
  let volumeLoadKg = 0;
  let repetitions = 0;
  for (const set of input.sets) {
    if (set.repetitions === null || set.loadKg === null) {
      const text = 'A set lacks its repetitions or its load, so the sum is not known.';
      const unknown = { volumeLoadKg: null, repetitions: null, meanLoadKg: null };
      return answer<VolumeLoad>(unknown, [{ code: 'missing', text }]);
    }
    volumeLoadKg += set.repetitions * set.loadKg;
    repetitions += set.repetitions;
  }
  return answer({
    volumeLoadKg,
    repetitions,
    meanLoadKg: repetitions === 0 ? null : volumeLoadKg / repetitions,
  });
};

export const volumeLoadRow = calculation({
  id: 'volume-load',
  title: 'Volume load and mean load of a repetition',
  area: 'strength',
  input: [
    {
      name: 'sets',
      kind: 'list',
      minItems: 1,
      maxItems: 100,
      of: {
        name: 'set',
        kind: 'record',
        fields: [
          { name: 'repetitions', kind: 'integer', unit: '1', min: 0, max: 1000, nullable: true },
          { name: 'loadKg', kind: 'number', unit: 'kg', min: 0, max: 1000, nullable: true },
        ],
      },
    },
  ],
  result: [
    { name: 'volumeLoadKg', unit: 'kg', about: 'Null when a set lacks its count or load.' },
    { name: 'repetitions', unit: '1' },
    { name: 'meanLoadKg', unit: 'kg' },
  ],
  citations: [workedTable('volume load, variable load, mean load')],
  calculate: volumeLoad,
  example: {
    sets: [
      { repetitions: 10, loadKg: 55 },
      { repetitions: 8, loadKg: 65 },
      { repetitions: 6, loadKg: 75 },
    ],
  },
});
