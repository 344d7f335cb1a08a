/** A range of the picture, from two weeks on; what lies outside is left out and nothing is drawn anew. */
import { addDays, type Day, daysBetween, earlierDay } from '../time/day.ts';
import { type LinePoint, stepsWithin } from './chart-steps.ts';
import { type ReviewChart, ticksOf } from './review-chart.ts';

export const shortestRange = 14;

export interface DateRange {
  readonly from: Day;
  readonly to: Day;
}

/** Kept inside the picture and at least two weeks long; the end that was moved gives way. */
export const rangeWithin = (
  chart: Pick<ReviewChart, 'since' | 'today'>,
  wanted: DateRange,
  moved: keyof DateRange,
): DateRange => {
  const least = Math.min(shortestRange, daysBetween(chart.since, chart.today));
  const clamp = (day: Day, low: Day, high: Day): Day => (day < low ? low : day > high ? high : day);
  if (moved === 'from') {
    const to = clamp(wanted.to, addDays(chart.since, least), chart.today);
    return { from: clamp(wanted.from, chart.since, addDays(to, -least)), to };
  }
  const from = clamp(wanted.from, chart.since, addDays(chart.today, -least));
  return { from, to: clamp(wanted.to, addDays(from, least), chart.today) };
};

const within =
  ({ from, to }: DateRange) =>
  ({ day }: { readonly day: Day }): boolean =>
    day >= from && day <= to;

/** The days of a range with something on them. */
export const daysWithin = ({ days }: Pick<ReviewChart, 'days'>, range: DateRange): ReviewChart['days'] =>
  days.filter(within(range));

const spansWithin = <S extends DateRange>(spans: readonly S[], { from, to }: DateRange): readonly S[] =>
  spans.flatMap((span) =>
    span.to < from || span.from > to
      ? []
      : [{ ...span, from: span.from < from ? from : span.from, to: span.to > to ? to : span.to }],
  );

/** First day on which there is anything to draw; null = none. */
export const firstDrawn = ({ days, steps }: Pick<ReviewChart, 'days' | 'steps'>): Day | null => {
  const [day, step] = [days[0]?.day ?? null, steps[0]?.from ?? null];
  return day === null || step === null ? (day ?? step) : earlierDay(day, step);
};

/** What held when the range began and when it ends is carried to its edges. */
const lineWithin = (segment: readonly LinePoint[], range: DateRange): readonly LinePoint[] => {
  const before = segment.findLast(({ day }) => day < range.from);
  const inside = segment.filter(within(range));
  const goesOn = segment.some(({ day }) => day > range.to);
  const begun =
    before && (inside.length > 0 || goesOn) ? [{ ...before, day: range.from }, ...inside] : inside;
  const last = begun.at(-1);
  return goesOn && last ? [...begun, { ...last, day: range.to }] : begun;
};

/** The heights stay those of the whole, so that a step keeps its height while a range is looked at. */
export const zoomed = (chart: ReviewChart, { from, to }: DateRange): ReviewChart => {
  if (from <= chart.since && to >= chart.today) return chart;
  const isWithin = within({ from, to });
  return {
    ...chart,
    since: from,
    today: to,
    loads: chart.loads.filter(isWithin),
    loadLine: chart.loadLine.flatMap((segment) => {
      const inside = lineWithin(segment, { from, to });
      return inside.length > 0 ? [inside] : [];
    }),
    steps: stepsWithin(chart.steps, { since: from, today: to }).map((step) =>
      step.from < from ? { ...step, from, isEarlier: true } : step,
    ),
    pains: chart.pains.filter(isWithin),
    markers: chart.markers.filter(isWithin),
    others: chart.others.filter(isWithin),
    gaps: spansWithin(chart.gaps, { from, to }),
    flares: spansWithin(chart.flares, { from, to }),
    treatments: spansWithin(chart.treatments, { from, to }),
    thresholds: spansWithin(chart.thresholds, { from, to }),
    ticks: ticksOf(from, to),
    days: daysWithin(chart, { from, to }),
  };
};
