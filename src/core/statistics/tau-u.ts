/**
 * Tau-U: overlap of two phases with or without the trends inside them.
 *
 * The name covers several formulas with different denominators, some of which can leave −1 to 1. The formula used
 * is named in the answer. Prefer the nonoverlap of all pairs.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';
import { signsBetween, signsWithin } from './pair-signs.ts';
import { paired } from './series-fields.ts';

/** Which statistics enter: sign of the trend before, and whether the trend after and which pairs count below the line. */
const forms = {
  between: { trendBefore: 0, trendAfter: 0, pairsBefore: 0, pairsAfter: 0, formula: 'S(AB) / mn' },
  'less-trend-before': {
    trendBefore: -1,
    trendAfter: 0,
    pairsBefore: 0,
    pairsAfter: 0,
    formula: '(S(AB) − S(A)) / mn',
  },
  'with-trend-after': {
    trendBefore: 0,
    trendAfter: 1,
    pairsBefore: 0,
    pairsAfter: 1,
    formula: '(S(AB) + S(B)) / (mn + n(n − 1)/2)',
  },
  full: {
    trendBefore: -1,
    trendAfter: 1,
    pairsBefore: 1,
    pairsAfter: 1,
    formula: '(S(AB) − S(A) + S(B)) / (mn + m(m − 1)/2 + n(n − 1)/2)',
  },
} as const;

const pairsWithin = (count: number): number => (count * (count - 1)) / 2;

export const tauU = (before: readonly number[], after: readonly number[], form: keyof typeof forms) => {
  const row = forms[form];
  const numerator =
    signsBetween(before, after).s +
    row.trendBefore * signsWithin(before).s +
    row.trendAfter * signsWithin(after).s;
  const denominator =
    before.length * after.length +
    row.pairsBefore * pairsWithin(before.length) +
    row.pairsAfter * pairsWithin(after.length);
  return { tauU: numerator / denominator, numerator, denominator, formula: row.formula };
};

export const tauURow = calculation({
  id: 'tau-u',
  title: 'Overlap of two phases, trends considered',
  area: 'series',
  input: [
    paired('before', 1),
    paired('after', 1),
    { name: 'form', kind: 'enum', values: ['between', 'less-trend-before', 'with-trend-after', 'full'] },
  ],
  result: [
    { name: 'tauU', unit: '1' },
    { name: 'numerator', unit: '1' },
    { name: 'denominator', unit: '1' },
    { name: 'formula', unit: '', about: 'A is the phase before (m values), B the phase after (n values)' },
  ],
  citations: [
    {
      source: 'parker-2011-tau-u',
      locator: 'the four coefficients of the worked example',
      mark: 'second-hand',
      remark: 'Read in the documentation of two open programs.',
    },
  ],
  calculate: (input) => answer(tauU(input.before, input.after, input.form)),
  example: { before: [2, 3, 5, 3], after: [4, 5, 5, 7, 6], form: 'less-trend-before' },
});
