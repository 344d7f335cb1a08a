/**
 * Straight lines from a five-repetition maximum, 70 people of 18–69 years: chest press and leg press
 * only. The intercept is in kg, so a light lift is overstated: below 15 kg on the leg press the line
 * adds more than it is given. Says nothing of other lifts or of painful joints.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer, type Outcome } from '#core/outcome.ts';
import { loadField } from './fields.ts';
import { estimateNotMeasured } from './low-load-tests.ts';

const fiveRepMaxLifts = ['chest-press', 'leg-press'] as const;
export type FiveRepMaxLift = (typeof fiveRepMaxLifts)[number];

const lines = {
  'chest-press': { slope: 1.1307, interceptKg: 0.6999, standardErrorKg: 2.98 },
  'leg-press': { slope: 1.097, interceptKg: 14.2546, standardErrorKg: 16.16 },
} as const satisfies Record<FiveRepMaxLift, { slope: number; interceptKg: number; standardErrorKg: number }>;

export const oneRepMaxFromFive = (input: {
  readonly lift: FiveRepMaxLift;
  readonly fiveRepMaxKg: number;
}): Outcome<{ readonly oneRepMaxKg: number; readonly standardErrorKg: number }> => {
  const { slope, interceptKg, standardErrorKg } = lines[input.lift];
  const oneRepMaxKg = slope * input.fiveRepMaxKg + interceptKg;
  const notes = [estimateNotMeasured];
  if (interceptKg > 0.1 * input.fiveRepMaxKg) {
    notes.push({
      code: 'intercept-large',
      text: `The fixed part of this line, ${interceptKg} kg, is more than a tenth of the load given; at such light loads the line may overstate the maximum.`,
    });
  }
  return answer({ oneRepMaxKg, standardErrorKg }, notes);
};

export const fiveRepMaxRow = calculation({
  id: 'one-rep-max-from-five',
  title: 'One-repetition maximum from a five-repetition maximum',
  area: 'strength',
  input: [
    { name: 'lift', kind: 'enum', values: fiveRepMaxLifts },
    loadField('fiveRepMaxKg', 'Load lifted five times and not six.'),
  ],
  result: units({ oneRepMaxKg: 'kg', standardErrorKg: 'kg' }),
  citations: [
    {
      source: 'reynolds-2006',
      locator: 'abstract',
      mark: 'seen',
      remark: 'R² .993 chest press, .974 leg press; no more than 10 repetitions in straight-line equations.',
    },
  ],
  calculate: oneRepMaxFromFive,
  example: { lift: 'chest-press', fiveRepMaxKg: 40 },
});
