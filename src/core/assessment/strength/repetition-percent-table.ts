/**
 * Percent of the maximum at which a number of repetitions can just be done. Two printings of the
 * same handbook table disagree at 12 repetitions (70 against 67 %). The load chart was seen and is
 * used; the textbook edition is from memory and only shown beside it. Both come mainly from trained
 * men, free weights and one set, and hold better above 75 % than below. Nothing beyond 12 is used.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { repetitionsField } from './fields.ts';

/** Index = repetitions − 1; null = not printed. */
const loadChart = [100, 95, 93, 90, 87, 85, 83, 80, 77, 75, null, 70] as const;
const textbook = [100, 95, 93, 90, 87, 85, 83, 80, 77, 75, 70, 67, null, null, 65] as const;

export const longestChartSet = loadChart.length;

export const chartCitations: readonly Citation[] = [
  {
    source: 'nsca-load-chart',
    locator: 'load chart, rows 1–10 and 12 repetitions',
    mark: 'second-hand',
    remark:
      'Seen on copies of the chart. 11 repetitions are not printed; the middle of its neighbours is used.',
  },
  {
    source: 'nsca-textbook',
    locator: 'textbook edition, 11, 12 and 15 repetitions',
    mark: 'memory',
    remark: 'From memory: 70, 67 and 65 %. Shown for comparison, never used.',
  },
];

/** Percent on the load chart, 11 repetitions half-way between its neighbours; null beyond it. */
export const chartPercent = (repetitions: number): number | null => {
  const printed = loadChart[repetitions - 1];
  if (printed !== null) return printed ?? null;
  const before = loadChart[repetitions - 2] ?? null;
  const after = loadChart[repetitions] ?? null;
  return before === null || after === null ? null : (before + after) / 2;
};

export interface PercentForRepetitions {
  readonly percent: number;
  readonly editionUsed: 'load-chart';
  readonly byEdition: {
    /** As printed; null where the chart has no row. */
    readonly loadChart: number | null;
    /** From memory. */
    readonly textbookFromMemory: number | null;
  };
}

const chartPopulation: Note = {
  code: 'chart-population',
  text: 'Charts of this kind come mainly from trained men with free weights in a single set. They hold better above 75 % of the maximum than below.',
};

const beyondChart = (repetitions: number): string => {
  const remembered = textbook[repetitions - 1];
  const beside =
    remembered === undefined || remembered === null
      ? ''
      : ` The textbook edition, from memory, prints ${remembered} %; it is not used.`;
  return `The load chart ends at ${longestChartSet} repetitions.${beside} Test with a heavier load, or dose by effort.`;
};

export const percentForRepetitions = (input: {
  readonly repetitions: number;
}): Outcome<PercentForRepetitions> => {
  const percent = chartPercent(input.repetitions);
  if (percent === null) return refuse('repetitions', 'outside-validity', beyondChart(input.repetitions));
  const printed = loadChart[input.repetitions - 1] ?? null;
  const remembered = textbook[input.repetitions - 1] ?? null;
  const notes = [chartPopulation];
  if (printed === null) {
    notes.push({
      code: 'between-rows',
      text: 'The chart prints no row here; the middle of its neighbours is used.',
    });
  }
  if (percent !== remembered) {
    notes.push({
      code: 'sources-disagree',
      text: `The load chart gives ${percent} %, the textbook edition, from memory, ${remembered ?? 'nothing'} %. The load chart is used.`,
    });
  }
  const byEdition = { loadChart: printed, textbookFromMemory: remembered };
  return answer({ percent, editionUsed: 'load-chart' as const, byEdition }, notes);
};

export const percentForRepetitionsRow = calculation({
  id: 'percent-for-repetitions',
  title: 'Percent of the maximum for a number of repetitions, two printings',
  area: 'strength',
  input: [repetitionsField],
  result: [
    { name: 'percent', unit: '%' },
    { name: 'editionUsed', unit: '' },
    { name: 'byEdition', unit: '%', about: 'Load chart as printed; textbook edition from memory.' },
  ],
  citations: chartCitations,
  calculate: percentForRepetitions,
  example: { repetitions: 12 },
});
