/**
 * Exact p value of the Mann–Kendall statistic for few values without ties.
 *
 * Every order of n different values is equally likely when there is no trend; the chance of a statistic at least
 * this far out is counted. Three values or fewer can never reach 0.05. Ties are refused, not broken.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, refuse } from '../outcome.ts';
import { signsWithin, tieGroups } from './pair-signs.ts';

/** Chance of each number of falling pairs among all orders of `count` different values. */
const fallingPairs = (count: number): readonly number[] => {
  let chances: readonly number[] = [1];
  for (let size = 2; size <= count; size += 1) {
    const next = new Array<number>(chances.length + size - 1).fill(0);
    chances.forEach((chance, falling) => {
      for (let added = 0; added < size; added += 1) next[falling + added]! += chance / size;
    });
    chances = next;
  }
  return chances;
};

/** Chance of a statistic at least as large as |s|, in one direction. */
export const mannKendallExactTail = (count: number, s: number): number => {
  const pairs = (count * (count - 1)) / 2;
  const mostFalling = (pairs - Math.abs(s)) / 2;
  return fallingPairs(count)
    .slice(0, mostFalling + 1)
    .reduce((sum, chance) => sum + chance, 0);
};

export const mannKendallExactRow = calculation({
  id: 'mann-kendall-exact',
  title: 'Exact trend test for few values',
  area: 'series',
  input: [
    {
      name: 'values',
      kind: 'list',
      of: { name: 'value', kind: 'number', unit: '1', min: -1e6, max: 1e6 },
      minItems: 2,
      maxItems: 30,
    },
  ],
  result: [
    { name: 's', unit: '1' },
    { name: 'pOneSided', unit: '1', about: 'in the direction of s' },
    { name: 'pTwoSided', unit: '1' },
  ],
  citations: [
    {
      source: 'mann-kendall-by-hand',
      locator: 'definition of S; the distribution is counted here',
      mark: 'computed',
    },
  ],
  calculate: (input) => {
    if (tieGroups(input.values).length > 0) {
      return refuse(
        'values',
        'outside-validity',
        'Exact chances need different values; with ties use mann-kendall.',
      );
    }
    const { s } = signsWithin(input.values);
    const pOneSided = mannKendallExactTail(input.values.length, s);
    return answer({ s, pOneSided, pTwoSided: Math.min(1, 2 * pOneSided) });
  },
  example: { values: [1, 2, 3, 4, 5] },
});
