/**
 * Change of body mass in percent of the earlier mass.
 *
 * Arithmetic only: it does not know whether the change was wanted, nor how much of it is fluid.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';
import { massKg } from './body-fields.ts';

const lossPercent = (earlierKg: number, laterKg: number): number => ((earlierKg - laterKg) / earlierKg) * 100;

export const weightChangeRow = calculation({
  id: 'weight-change',
  title: 'Change of body mass',
  area: 'nutrition',
  input: [
    { ...massKg, name: 'earlierKg' },
    { ...massKg, name: 'laterKg' },
  ],
  result: [{ name: 'lossPercent', unit: '%', about: 'below zero when mass was gained' }],
  citations: [
    { source: 'body-composition-identity', locator: 'percent of the earlier mass', mark: 'computed' },
  ],
  calculate: (input) => answer({ lossPercent: lossPercent(input.earlierKg, input.laterKg) }),
  example: { earlierKg: 74, laterKg: 70 },
});
