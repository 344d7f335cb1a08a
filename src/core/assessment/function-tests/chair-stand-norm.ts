/**
 * 30-second chair stand against the below-average cut for age and sex.
 *
 * A fall-risk cut for people of 60 to 94 years, not a goal. The score is 0 when the arms are used, and a
 * stand more than half-way up at 30 seconds counts. Outside the table there is no norm, and none is invented.
 */
import { calculation } from '#core/calculations/calculation.ts';
import type { Field, InputOf } from '#core/calculations/describe.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';

/** A score under the figure is below average. Ages are inclusive, in completed years. */
const chairStandTable = [
  { from: 60, to: 64, male: 14, female: 12 },
  { from: 65, to: 69, male: 12, female: 11 },
  { from: 70, to: 74, male: 12, female: 10 },
  { from: 75, to: 79, male: 11, female: 10 },
  { from: 80, to: 84, male: 10, female: 9 },
  { from: 85, to: 89, male: 8, female: 8 },
  { from: 90, to: 94, male: 7, female: 4 },
] as const;

const input = [
  { name: 'sex', kind: 'enum', values: ['female', 'male'] },
  { name: 'ageYears', kind: 'number', unit: 'a', min: 18, max: 120, about: 'Completed years count.' },
  { name: 'stands', kind: 'integer', unit: '{stand}', min: 0, max: 60 },
] as const satisfies readonly Field[];

export const chairStandNorm = (
  given: InputOf<typeof input>,
): Outcome<{ belowAverage: boolean; threshold: number }> => {
  const age = Math.floor(given.ageYears);
  const row = chairStandTable.find((band) => age >= band.from && age <= band.to);
  if (!row) {
    return refuse(
      'ageYears',
      'outside-validity',
      'The table covers ages 60 to 94; there is no norm outside it.',
    );
  }
  const threshold = row[given.sex];
  return answer({ belowAverage: given.stands < threshold, threshold });
};

export const chairStandNormRow = calculation({
  id: 'chair-stand-norm',
  title: '30-second chair stand against the norm',
  area: 'outcomes',
  input,
  result: [
    { name: 'belowAverage', unit: '' },
    { name: 'threshold', unit: '{stand}', about: 'a score under this is below average' },
  ],
  citations: [
    {
      source: 'rikli-jones-1999',
      locator: 'below-average table, ages 60 to 94',
      mark: 'second-hand',
      remark: 'The same figures on two pages; the toolkit and the study themselves were not seen.',
    },
  ],
  calculate: chairStandNorm,
  example: { sex: 'male', ageYears: 72, stands: 11 },
});
