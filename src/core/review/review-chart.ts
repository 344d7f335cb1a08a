/**
 * What the picture draws, as plain marks on one axis of days. A figure that is not known has no
 * height; it is drawn as a mark of its own on the axis.
 */
import type { DecisionWord } from '../decision/answers.ts';
import { explainToClinician } from '../decision/explain.ts';
import { type TreatmentLine, treatmentOf } from '../episode/treatment/treatment-timeline.ts';
import { addDays, type Day, daysBetween } from '../time/day.ts';
import { type LoadMark, loadMark, type PainMark, painMarks } from './answer-marks.ts';
import {
  type LinePoint,
  type LoadRange,
  loadRange,
  type StepMark,
  staircase,
  stepMarks,
} from './chart-steps.ts';
import { type ChartNames, type DayDetail, dayDetail } from './day-detail.ts';
import type { DoseCourse } from './dose/dose-course.ts';
import type { LoadMeasure, SessionLoad } from './load-of-session.ts';
import { dayInWords } from './plain-words.ts';
import type { LoadGap, ReviewSeries, ThresholdSpan } from './series.ts';

interface FlareSpan {
  readonly from: Day;
  readonly to: Day;
  readonly mornings: number;
}

/** Something done about the disease; a course is a span, everything else a day. */
interface TreatmentSpan {
  readonly from: Day;
  readonly to: Day;
  readonly text: string;
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

/** A day that would have been another one; the same decision with another step is told and not drawn. */
interface OtherMark {
  readonly day: Day;
  readonly way: 'more-cautious' | 'bolder';
}

/** The answers of one joint over some days. */
export interface JointMarks {
  readonly since: Day;
  readonly today: Day;
  readonly pains: readonly PainMark[];
  /** Where the pain ends: the worst that was given, or the limit where it lies deeper. */
  readonly painFoot: number;
  readonly thresholds: readonly ThresholdSpan[];
}

export interface ReviewChart extends JointMarks {
  readonly measure: LoadMeasure;
  /** Lowest and highest figure there is: no part of the axis stands empty. */
  readonly loadRange: LoadRange;
  readonly loadLine: readonly (readonly LinePoint[])[];
  /** Doses that were in force; empty where another measure is shown. */
  readonly steps: readonly StepMark[];
  readonly loads: readonly LoadMark[];
  readonly markers: readonly DecisionMarker[];
  /** Empty where nothing is looked back with. */
  readonly others: readonly OtherMark[];
  readonly flares: readonly FlareSpan[];
  readonly treatments: readonly TreatmentSpan[];
  readonly gaps: readonly LoadGap[];
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

const pointsOf = (segment: readonly SessionLoad[]): readonly LinePoint[] =>
  segment.flatMap(({ day, value }) => (value === null ? [] : [{ day, value }]));

/** Mornings of a flare that follow each other day by day. */
const flareSpans = (pains: readonly PainMark[]): readonly FlareSpan[] => {
  const spans: FlareSpan[] = [];
  for (const { day, flare } of pains) {
    if (!flare) continue;
    const open = spans.at(-1);
    if (open && daysBetween(open.to, day) <= 1)
      spans[spans.length - 1] = { ...open, to: day, mornings: open.mornings + 1 };
    else spans.push({ from: day, to: day, mornings: 1 });
  }
  return spans;
};

/** Cut off at the edges of the picture; its text keeps its own days. */
const treatmentSpans = (
  lines: readonly TreatmentLine[],
  { joint, since, today }: ReviewSeries,
): readonly TreatmentSpan[] =>
  treatmentOf(lines, joint, since, today).map(({ day, lastDay, what }) => ({
    from: day < since ? since : day,
    to: lastDay > today ? today : lastDay,
    text: `${dayInWords(day, today)}: ${what}`,
  }));

const otherMarks = (
  { others }: ChartNames,
  { since, today }: Pick<JointMarks, 'since' | 'today'>,
): readonly OtherMark[] =>
  [...(others ?? [])].flatMap(([day, { way }]) =>
    way === 'other' || day < since || day > today ? [] : [{ day, way }],
  );

const leastFoot = 2;

export const jointMarksOf = (series: ReviewSeries): JointMarks => {
  const { since, today, thresholds } = series;
  const pains = series.rows.flatMap((row) => painMarks(series, row));
  const deepest = [...pains.map(({ value }) => value ?? 0), ...thresholds.map((span) => span.painCeiling)];
  return { since, today, pains, painFoot: Math.max(leastFoot, ...deepest), thresholds };
};

/** `course` of the exercise shown; it is drawn where the dose is the measure. */
export const reviewChartOf = (
  series: ReviewSeries,
  names: ChartNames = {},
  course: Pick<DoseCourse, 'steps'> | null | undefined = null,
): ReviewChart => {
  const { measure } = series;
  const answers = jointMarksOf(series);
  const { since, today } = answers;
  const steps = measure === 'dose' && course ? stepMarks(course.steps, series) : [];
  const shares = steps.flatMap(({ share }) => share ?? []);
  return {
    ...answers,
    measure,
    loadRange: loadRange(
      [...series.loads.map(({ value }) => value), ...shares],
      shares.length > 0 ? Math.min(...shares) : null,
    ),
    loadLine: steps.length > 0 ? staircase(steps, today) : series.loadLine.map(pointsOf),
    steps,
    loads: series.loads.map(loadMark),
    markers: series.markers.map(({ first, last, count }) => ({
      id: first.id,
      day: first.day,
      lastDay: last.day,
      word: first.decision,
      count,
      reasons: first.reasons.map(explainToClinician),
      answered: names.answers?.get(first.id) ?? null,
    })),
    others: otherMarks(names, answers),
    flares: flareSpans(answers.pains),
    treatments: treatmentSpans(names.treatments ?? [], series),
    gaps: series.gaps,
    ticks: ticksOf(since, today),
    days: series.rows.map((row) => dayDetail(row, series, names)),
  };
};
