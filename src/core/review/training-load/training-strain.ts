/**
 * Weekly load, monotony (mean ÷ standard deviation of seven days) and strain (weekly load ×
 * monotony). The abstract does not say which standard deviation; the choice changes monotony by
 * √(7/6) = 1.080, so both are given and the population one leads. Seven equal days have no
 * deviation and so no monotony. Stays at the desk and drives no decision.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome } from '#core/outcome.ts';
import { workedTable } from './volume-load.ts';

export interface TrainingStrain {
  readonly weekly: number;
  readonly monotony: number | null;
  readonly strain: number | null;
  readonly sampleMonotony: number | null;
  readonly sampleStrain: number | null;
}

/** Null where there is no deviation to divide by. */
export const monotony = (mean: number, deviation: number): number | null =>
  deviation > 0 ? mean / deviation : null;

const bothDeviations: Note = {
  code: 'which-deviation',
  text: 'Monotony and strain use the population standard deviation (divisor 7); the sample one (divisor 6) stands beside them. The source does not say which was meant.',
};
const restDays: Note = {
  code: 'rest-days',
  text: 'A rest day counts as 0 (from memory). A day without an answer is not a rest day: leave the week out.',
};
const deskOnly: Note = {
  code: 'desk-only',
  text: 'No decision is taken from it. Thresholds were individual where they were studied; the often quoted 2.0 is from memory and not used.',
};
const noDeviation: Note = {
  code: 'no-deviation',
  text: 'The days do not differ, so monotony and strain are not defined.',
};

export const trainingStrain = (input: {
  readonly dailyLoads: readonly number[];
}): Outcome<TrainingStrain> => {
  const days = input.dailyLoads.length;
  const weekly = input.dailyLoads.reduce((sum, load) => sum + load, 0);
  const mean = weekly / days;
  const squares = input.dailyLoads.reduce((sum, load) => sum + (load - mean) ** 2, 0);
  // Equal days are compared as they were given: a rounded mean would leave a false deviation.
  const isEqual = input.dailyLoads.every((load) => load === input.dailyLoads[0]);
  const population = isEqual ? null : monotony(mean, Math.sqrt(squares / days));
  const sample = isEqual ? null : monotony(mean, Math.sqrt(squares / (days - 1)));
  const notes = [bothDeviations, restDays, deskOnly];
  return answer(
    {
      weekly,
      monotony: population,
      strain: population === null ? null : weekly * population,
      sampleMonotony: sample,
      sampleStrain: sample === null ? null : weekly * sample,
    },
    population === null ? [noDeviation, ...notes] : notes,
  );
};

export const trainingStrainRow = calculation({
  id: 'training-strain',
  title: 'Weekly load, monotony and strain',
  area: 'monitoring',
  input: [
    {
      name: 'dailyLoads',
      kind: 'list',
      of: { name: 'load', kind: 'number', unit: '1', min: 0, max: 100_000 },
      minItems: 7,
      maxItems: 7,
      about: 'Session load of each of seven days; 0 on a rest day.',
    },
  ],
  result: [
    { name: 'weekly', unit: '1' },
    { name: 'monotony', unit: '1', about: 'Population standard deviation; null when days do not differ.' },
    { name: 'strain', unit: '1', about: 'From the population standard deviation.' },
    { name: 'sampleMonotony', unit: '1', about: 'From the sample standard deviation.' },
    { name: 'sampleStrain', unit: '1', about: 'From the sample standard deviation.' },
  ],
  citations: [
    {
      source: 'foster-1998',
      locator: 'abstract',
      mark: 'seen',
      remark: 'Which standard deviation is not said; rest days as 0 from memory.',
    },
    workedTable('monotony'),
  ],
  calculate: trainingStrain,
  example: { dailyLoads: [200, 0, 210, 0, 225, 60, 0] },
});
