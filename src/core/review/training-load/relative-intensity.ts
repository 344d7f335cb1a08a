/** Mean load of a repetition as a percentage of the maximum. Only as good as the maximum is. */
import { loadField } from '#core/assessment/strength/fields.ts';
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Outcome } from '#core/outcome.ts';
import { workedTable } from './volume-load.ts';

export const relativeIntensity = (input: {
  readonly meanLoadKg: number;
  readonly oneRepMaxKg: number;
}): Outcome<{ readonly percent: number }> =>
  answer({ percent: (input.meanLoadKg / input.oneRepMaxKg) * 100 });

export const relativeIntensityRow = calculation({
  id: 'relative-intensity',
  title: 'Mean load as a percentage of the maximum',
  area: 'strength',
  input: [loadField('meanLoadKg', 'Mean load of a repetition.'), loadField('oneRepMaxKg', 'The maximum.')],
  result: [{ name: 'percent', unit: '%' }],
  citations: [workedTable('mean load over the maximum')],
  calculate: relativeIntensity,
  example: { meanLoadKg: 63.33, oneRepMaxKg: 110 },
});
