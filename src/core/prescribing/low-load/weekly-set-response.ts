/**
 * What one more weekly set was worth on average: 0.37 % of muscle size, 0.023 of a standard
 * deviation, over 34 groups in 15 studies of healthy adults. A slope within the volumes studied and
 * not a promise for one person; the three levels (under 5, 5–9, 10 and more) differed only as a
 * trend (P = .074).
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer, type Outcome } from '#core/outcome.ts';

const gainPercentPerSet = 0.37;
const effectSizePerSet = 0.023;

export const weeklySetResponse = (input: {
  readonly additionalWeeklySets: number;
}): Outcome<{ readonly gainPercent: number; readonly effectSize: number }> =>
  answer(
    {
      gainPercent: gainPercentPerSet * input.additionalWeeklySets,
      effectSize: effectSizePerSet * input.additionalWeeklySets,
    },
    [
      {
        code: 'average-slope',
        text: 'An average slope over studies of healthy adults; the levels under 5, 5–9 and 10 or more sets differed only as a trend. Gains per level, from memory: 5.4, 6.6 and 9.8 %.',
      },
    ],
  );

export const weeklySetResponseRow = calculation({
  id: 'weekly-set-response',
  title: 'Average gain from further weekly sets',
  area: 'strength',
  input: [{ name: 'additionalWeeklySets', kind: 'integer', unit: '1', min: 0, max: 10 }],
  result: units({ gainPercent: '%', effectSize: '1' }),
  citations: [
    {
      source: 'schoenfeld-2017-volume',
      locator: 'abstract',
      mark: 'seen',
      remark: 'Gains by level (5.4, 6.6, 9.8 %) are from memory.',
    },
  ],
  calculate: weeklySetResponse,
  example: { additionalWeeklySets: 1 },
});
