/**
 * Weekly sets of a muscle with indirect sets at half: the count that fitted best over 67 studies
 * (2,058 people), a preprint. A way of counting, not a target.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Outcome } from '#core/outcome.ts';

const indirectSetWeight = 0.5;

export const fractionalSets = (input: {
  readonly directSets: number;
  readonly indirectSets: number;
}): Outcome<{ readonly weeklySets: number }> =>
  answer({ weeklySets: input.directSets + indirectSetWeight * input.indirectSets });

export const fractionalSetsRow = calculation({
  id: 'fractional-sets',
  title: 'Weekly sets of a muscle, indirect sets at half',
  area: 'strength',
  input: [
    { name: 'directSets', kind: 'integer', unit: '1', min: 0, max: 200 },
    { name: 'indirectSets', kind: 'integer', unit: '1', min: 0, max: 200 },
  ],
  result: [{ name: 'weeklySets', unit: '1' }],
  citations: [{ source: 'pelland-2024', locator: 'preprint abstract', mark: 'seen' }],
  calculate: fractionalSets,
  example: { directSets: 6, indirectSets: 4 },
});
