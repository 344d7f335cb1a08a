/**
 * What the picture draws, as plain marks on one axis of days. A figure that is not known has no
 * height; it is drawn as a mark of its own on the axis.
 */
import type { DecisionWord } from '../decision/answers.ts';
import { explainToClinician } from '../decision/explain.ts';
import { addDays, type Day, daysBetween } from '../time/day.ts';
import { type ChartNames, type DayDetail, dayDetail } from './day-detail.ts';
import { hasMissing, highestPain } from './joint-answers.ts';
import { measureTitles, type SessionLoad } from './load-of-session.ts';
import { dayInWords } from './plain-words.ts';
import type { LoadGap, ReviewRow, ReviewSeries, ThresholdSpan } from './series.ts';

export interface LoadMark {
  readonly day: Day;
  readonly value: number | null;
  readonly kind: SessionLoad['kind'];
  /** The entry was corrected after it was sent. */
  readonly amended: boolean;
}

export interface PainMark {
  readonly day: Day;
  readonly of: 'morning' | 'session';
  /** null = due and not given. */
  readonly value: number | null;
  readonly flare: boolean;
  readonly amended: boolean;
}

export interface DecisionMarker {
  readonly id: string;
  readonly day: Day;
  readonly lastDay: Day;
  readonly word: DecisionWord;
  /** Decisions of this word in a row. */
  readonly count: number;
  readonly reasons: readonly string[];
  /** Who answered the decision that began it, and how; null = nobody yet. */
  readonly answered: string | null;
}

export interface ReviewChart {
  readonly since: Day;
  readonly today: Day;
  readonly title: string;
  readonly unit: string;
  /** Height of the load panel: the first round figure that holds every load. */
  readonly loadTop: number;
  readonly loadLine: readonly (readonly LoadMark[])[];
  readonly loads: readonly LoadMark[];
  readonly pains: readonly PainMark[];
  readonly markers: readonly DecisionMarker[];
  readonly gaps: readonly LoadGap[];
  readonly thresholds: readonly ThresholdSpan[];
  readonly ticks: readonly { readonly day: Day; readonly label: string }[];
  /** What stands on each day with something on it, in words. */
  readonly days: readonly DayDetail[];
}

const mostTicks = 6;

/** Days to label: evenly spaced back from today, few enough to stand side by side on a phone. */
export const axisDays = (since: Day, today: Day): readonly Day[] => {
  const span = daysBetween(since, today);
  const tickSteps = [1, 2, 4, 7, 14, 28, 56, 91, 182, 364];
  const step = tickSteps.find((days) => span / days < mostTicks) ?? tickSteps.at(-1)!;
  const days: Day[] = [];
  for (let day = today; day >= since; day = addDays(day, -step)) days.unshift(day);
  return days;
};

export const ticksOf = (since: Day, today: Day): ReviewChart['ticks'] => {
  const isLong = daysBetween(since, today) > 300;
  return axisDays(since, today).map((day) => ({
    day,
    label: isLong ? dayInWords(day).split(' ').slice(1).join(' ') : dayInWords(day, today),
  }));
};

/** 1, 2 or 5 times a power of ten, so that the axis ends on a figure one can read. */
export const roundTop = (highest: number): number => {
  if (!(highest > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(highest));
  const tops = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];
  return (tops.find((top) => top * power >= highest - 1e-9) ?? 10) * power;
};

const loadMark = ({ day, value, kind, amended }: SessionLoad): LoadMark => ({ day, value, kind, amended });

const painMarks = ({ day, pains, morning }: ReviewRow): readonly PainMark[] => [
  ...pains.flatMap((pain): readonly PainMark[] => {
    const value = highestPain(pain);
    const mark = { day, of: 'session', flare: false, amended: pain.amended } as const;
    const given: readonly PainMark[] = value === null ? [] : [{ ...mark, value }];
    return hasMissing(pain) ? [...given, { ...mark, value: null }] : given;
  }),
  ...(morning && morning.pain !== 'not-asked'
    ? [
        {
          day,
          of: 'morning' as const,
          value: morning.pain === 'missing' ? null : morning.pain,
          flare: morning.flare === true,
          amended: morning.amended,
        },
      ]
    : []),
];

export const reviewChartOf = (series: ReviewSeries, names: ChartNames = {}): ReviewChart => {
  const known = series.loads.flatMap((load) => (load.value === null ? [] : [load.value]));
  return {
    since: series.since,
    today: series.today,
    title: measureTitles[series.measure].title,
    unit: series.unit,
    loadTop: roundTop(Math.max(0, ...known)),
    loadLine: series.loadLine.map((segment) => segment.map(loadMark)),
    loads: series.loads.map(loadMark),
    pains: series.rows.flatMap(painMarks),
    markers: series.markers.map(({ first, last, count }) => ({
      id: first.id,
      day: first.day,
      lastDay: last.day,
      word: first.decision,
      count,
      reasons: first.reasons.map(explainToClinician),
      answered: names.answers?.get(first.id) ?? null,
    })),
    gaps: series.gaps,
    thresholds: series.thresholds,
    ticks: ticksOf(series.since, series.today),
    days: series.rows.map((row) => dayDetail(row, series, names)),
  };
};
