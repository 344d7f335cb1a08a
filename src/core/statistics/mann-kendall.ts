/**
 * Mann–Kendall test of a steady trend, with corrections for ties and continuity.
 *
 * Normal approximation: for ten values or fewer without ties use the exact row. It takes the values as
 * independent; diary days that resemble each other make small p values too common. It never drives a decision.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, type Note } from '../outcome.ts';
import { normalUpperTail } from './normal-tail.ts';
import { signsWithin, tieGroups } from './pair-signs.ts';
import { paired } from './series-fields.ts';

export interface MannKendall {
  readonly s: number;
  readonly variance: number;
  readonly z: number;
  readonly pTwoSided: number;
  /** Null when every value is the same. */
  readonly tauB: number | null;
  readonly pairsUp: number;
  readonly pairsDown: number;
  readonly pairsTied: number;
}

/** n(n − 1)(2n + 5), the term of the variance for a group of n. */
const varianceTerm = (count: number): number => count * (count - 1) * (2 * count + 5);

export const mannKendall = (values: readonly number[]): MannKendall => {
  const signs = signsWithin(values);
  const ties = tieGroups(values);
  const variance =
    (varianceTerm(values.length) - ties.reduce((sum, count) => sum + varianceTerm(count), 0)) / 18;
  const z = signs.s === 0 ? 0 : (signs.s - Math.sign(signs.s)) / Math.sqrt(variance);
  const pairs = (values.length * (values.length - 1)) / 2;
  const untied = pairs - signs.ties;
  return {
    s: signs.s,
    variance,
    z,
    pTwoSided: Math.min(1, 2 * normalUpperTail(Math.abs(z))),
    tauB: untied === 0 ? null : signs.s / Math.sqrt(pairs * untied),
    pairsUp: signs.up,
    pairsDown: signs.down,
    pairsTied: signs.ties,
  };
};

const notesFor = (values: readonly number[]): readonly Note[] => [
  {
    code: 'days-not-independent',
    text: 'Days that resemble their neighbours make small p values too common. A description, never a decision.',
  },
  ...(values.length <= 10 && tieGroups(values).length === 0
    ? [{ code: 'use-exact', text: 'Ten values or fewer without ties: the exact p value is the better one.' }]
    : []),
];

export const mannKendallRow = calculation({
  id: 'mann-kendall',
  title: 'Trend test of Mann and Kendall',
  area: 'series',
  input: [paired('values', 2)],
  result: [
    { name: 's', unit: '1' },
    { name: 'variance', unit: '1' },
    { name: 'z', unit: '1' },
    { name: 'pTwoSided', unit: '1' },
    { name: 'tauB', unit: '1', about: 'null when every value is the same' },
    { name: 'pairsUp', unit: '{pair}' },
    { name: 'pairsDown', unit: '{pair}' },
    { name: 'pairsTied', unit: '{pair}' },
  ],
  citations: [
    { source: 'mann-kendall-by-hand', locator: 'S, variance with ties, Z with continuity', mark: 'seen' },
  ],
  calculate: (input) => answer(mannKendall(input.values), notesFor(input.values)),
  example: { values: [12.9, 14.8, 13.2, 15.7, 13.8, 15.6, 12.9, 11, 17.3, 15.9, 19, 18.3, 20.1, 21.7] },
});
