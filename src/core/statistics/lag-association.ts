/**
 * Load of a day beside pain of the same day and of the next one to three days.
 *
 * Correlation over the pairs recorded, each lag with its own means. Refused under 28 days on which both were
 * recorded. The null band is widened for three lags looked at and for days that resemble their neighbours.
 * Seen together is no proof of cause: alternating training days alone make patterns. It never drives a decision.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, type Outcome, refuse } from '../outcome.ts';
import { meanOf } from './moments.ts';
import { daily } from './series-fields.ts';

const fewestDays = 28;
const lags = [0, 1, 2, 3] as const;
/** Two-sided 5 % shared by three lags. */
const bonferroniZ = 2.3939797998185104;
/** Under this many effective pairs a band says nothing. */
const fewestEffectivePairs = 4;

type Day = number | null;
type Pair = readonly [load: number, pain: number];

const pairsAt = (load: readonly Day[], pain: readonly Day[], lag: number): readonly Pair[] =>
  load.slice(0, load.length - lag).flatMap((value, day) => {
    const later = pain[day + lag];
    return value === null || later === null || later === undefined ? [] : [[value, later] as const];
  });

/** Null when one of the two never changes. */
const correlation = (pairs: readonly Pair[]): number | null => {
  if (pairs.length < 2) return null;
  const meanLoad = meanOf(pairs.map((pair) => pair[0]));
  const meanPain = meanOf(pairs.map((pair) => pair[1]));
  let cross = 0;
  let loadSquares = 0;
  let painSquares = 0;
  for (const [load, pain] of pairs) {
    cross += (load - meanLoad) * (pain - meanPain);
    loadSquares += (load - meanLoad) ** 2;
    painSquares += (pain - meanPain) ** 2;
  }
  const scale = Math.sqrt(loadSquares) * Math.sqrt(painSquares);
  return scale > 0 ? Math.max(-1, Math.min(1, cross / scale)) : null;
};

/** Correlation of a series with itself a day later, by the common mean and all squares. */
const dayToDay = (values: readonly Day[]): number => {
  const recorded = values.filter((value) => value !== null);
  const mean = meanOf(recorded);
  const squares = recorded.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const cross = pairsAt(values, values, 1).reduce(
    (sum, [now, next]) => sum + (now - mean) * (next - mean),
    0,
  );
  return squares > 0 ? cross / squares : 0;
};

/** Pairs as good as this many independent ones, never more than there are. */
const effectivePairs = (pairs: number, product: number): number =>
  Math.min(pairs, (pairs * (1 - product)) / (1 + product));

export const lagBand = (pairs: number, product: number): number | null => {
  const effective = effectivePairs(pairs, product);
  return effective < fewestEffectivePairs ? null : bonferroniZ / Math.sqrt(effective);
};

export interface LagRow {
  readonly lagDays: number;
  readonly pairs: number;
  readonly correlation: number | null;
  readonly band: number | null;
  readonly outsideBand: boolean | null;
}

export const lagAssociation = (
  load: readonly Day[],
  pain: readonly Day[],
): Outcome<{ byLag: readonly LagRow[]; loadDayToDay: number; painDayToDay: number }> => {
  if (load.length !== pain.length)
    return refuse('pain', 'inconsistent', 'Give load and pain for the same days.');
  const together = pairsAt(load, pain, 0).length;
  if (together < fewestDays) {
    return refuse(
      'pain',
      'outside-validity',
      `Give at least ${fewestDays} days with both recorded; there are ${together}.`,
    );
  }
  const loadDayToDay = dayToDay(load);
  const painDayToDay = dayToDay(pain);
  const byLag = lags.map((lagDays): LagRow => {
    const pairs = pairsAt(load, pain, lagDays);
    const r = correlation(pairs);
    const band = lagBand(pairs.length, loadDayToDay * painDayToDay);
    const outsideBand = r === null || band === null ? null : Math.abs(r) > band;
    return { lagDays, pairs: pairs.length, correlation: r, band, outsideBand };
  });
  return answer({ byLag, loadDayToDay, painDayToDay }, [
    {
      code: 'not-cause',
      text: 'Seen together, which is no proof of cause. A description; it drives nothing.',
    },
  ]);
};

export const lagAssociationRow = calculation({
  id: 'lag-association',
  title: 'Load beside the pain of the next days',
  area: 'series',
  input: [
    daily('load', 'One load a day; a rest day is 0, a day without a record is null.'),
    daily('pain', 'One rating a day; null for a day without a record.'),
  ],
  result: [
    { name: 'byLag', unit: '1', about: 'lagDays, pairs, correlation, band, outsideBand' },
    { name: 'loadDayToDay', unit: '1' },
    { name: 'painDayToDay', unit: '1' },
  ],
  citations: [
    {
      source: 'lag-correlation',
      locator: 'pairwise correlation, null band, effective pairs',
      mark: 'computed',
      remark: 'Another program divides by all days and uses common means; its figures differ.',
    },
  ],
  calculate: (input) => lagAssociation(input.load, input.pain),
  example: {
    load: [10, 0, 12, 0, 15, 0, 0, 12, 0, 16, 0, 18, 0, 0, 10, 0, 14, 0, 20, 0, 0, 16, 0, 18, 0, 22, 0, 0],
    pain: [2, 2, 3, 2, 3, 2, 3, 2, 2, 3, 3, 4, 3, 4, 3, 3, 2, 3, 3, 3, 5, 4, 3, 4, 4, 4, 5, 5],
  },
});
