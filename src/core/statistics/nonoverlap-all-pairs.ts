/**
 * Nonoverlap of all pairs: the chance that a day after a change is higher than a day before it.
 *
 * Ties count half. For symptoms "higher" is worse. It describes two phases and knows nothing of a trend that was
 * there already, nor of what caused the difference. Published standard errors of an early tool were wrong; none
 * is given.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';
import { signsBetween } from './pair-signs.ts';
import { paired } from './series-fields.ts';

export const nonoverlapAllPairs = (before: readonly number[], after: readonly number[]) => {
  const signs = signsBetween(before, after);
  const pairs = before.length * after.length;
  return {
    nap: (signs.up + signs.ties / 2) / pairs,
    tau: signs.s / pairs,
    pairsUp: signs.up,
    pairsDown: signs.down,
    pairsTied: signs.ties,
  };
};

export const nonoverlapAllPairsRow = calculation({
  id: 'nonoverlap-all-pairs',
  title: 'Overlap of two phases',
  area: 'series',
  input: [paired('before', 1), paired('after', 1)],
  result: [
    { name: 'nap', unit: '1', about: 'share of pairs in which the later day is higher' },
    { name: 'tau', unit: '1', about: 'twice the share, less one' },
    { name: 'pairsUp', unit: '{pair}' },
    { name: 'pairsDown', unit: '{pair}' },
    { name: 'pairsTied', unit: '{pair}' },
  ],
  citations: [
    { source: 'parker-vannest-2009', locator: 'definition and worked data', mark: 'second-hand' },
    { source: 'parker-2011-review', locator: 'worked data: 0.917, Tau 0.833', mark: 'second-hand' },
  ],
  calculate: (input) => answer(nonoverlapAllPairs(input.before, input.after)),
  example: { before: [20, 20, 26, 25, 22, 23], after: [28, 25, 24, 27, 30, 30, 29] },
});
