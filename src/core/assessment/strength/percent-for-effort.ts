/**
 * Percent of the maximum from repetitions done and repetitions in reserve: the load chart read at
 * their sum. A shifted chart and not a published grid; beyond 12 together it says nothing. With a
 * load it also gives the maximum the chart implies.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import { loadField, repetitionsField } from './fields.ts';
import { chartCitations, chartPercent, longestChartSet } from './repetition-percent-table.ts';

export interface PercentForEffort {
  readonly effectiveRepetitions: number;
  readonly percent: number;
  /** Null when no load was given. */
  readonly oneRepMaxKg: number | null;
}

const shiftedChart: Note = {
  code: 'shifted-chart',
  text: 'The load chart read at repetitions done plus repetitions in reserve. The published grids of percentage by effort could not be read, so this is our own reading of the chart.',
};

export const percentForEffort = (input: {
  readonly repetitions: number;
  readonly reserve: number;
  readonly loadKg?: number;
}): Outcome<PercentForEffort> => {
  const effectiveRepetitions = input.repetitions + input.reserve;
  const percent = chartPercent(effectiveRepetitions);
  if (percent === null) {
    const reason = `Repetitions and reserve together make ${effectiveRepetitions}; the chart ends at ${longestChartSet}. Dose longer sets by effort alone.`;
    return refuse('repetitions', 'outside-validity', reason);
  }
  const oneRepMaxKg = input.loadKg === undefined ? null : (input.loadKg / percent) * 100;
  return answer({ effectiveRepetitions, percent, oneRepMaxKg }, [shiftedChart]);
};

export const percentForEffortRow = calculation({
  id: 'percent-for-effort',
  title: 'Percent of the maximum from repetitions and reserve',
  area: 'strength',
  input: [
    repetitionsField,
    { name: 'reserve', kind: 'integer', unit: '1', min: 0, max: 10 },
    { ...loadField('loadKg', 'Load lifted.'), optional: true },
  ],
  result: [
    { name: 'effectiveRepetitions', unit: '1' },
    { name: 'percent', unit: '%' },
    { name: 'oneRepMaxKg', unit: 'kg', about: 'Null without a load.' },
  ],
  citations: chartCitations,
  calculate: percentForEffort,
  example: { repetitions: 8, reserve: 2, loadKg: 20 },
});
