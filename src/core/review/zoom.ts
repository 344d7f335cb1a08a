/** A range of the picture, from two weeks on; what lies outside is left out and nothing is drawn anew. */
import { addDays, type Day, daysBetween } from '../time/day.ts';
import { type ReviewChart, roundTop, ticksOf } from './review-chart.ts';

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

export const zoomed = (chart: ReviewChart, { from, to }: DateRange): ReviewChart => {
  if (from <= chart.since && to >= chart.today) return chart;
  const isWithin = within({ from, to });
  const loads = chart.loads.filter(isWithin);
  const known = loads.flatMap((load) => (load.value === null ? [] : [load.value]));
  return {
    ...chart,
    since: from,
    today: to,
    loadTop: roundTop(Math.max(0, ...known)),
    loads,
    // The step that began before the range still holds in it, so one mark before is kept.
    loadLine: chart.loadLine.flatMap((segment) => {
      const first = segment.findIndex(isWithin);
      const inside = segment.filter(isWithin);
      if (inside.length === 0) return [];
      return [first > 0 ? [{ ...segment[first - 1]!, day: from }, ...inside] : inside];
    }),
    pains: chart.pains.filter(isWithin),
    markers: chart.markers.filter(isWithin),
    gaps: chart.gaps.flatMap((gap) =>
      gap.to < from || gap.from > to
        ? []
        : [{ ...gap, from: gap.from < from ? from : gap.from, to: gap.to > to ? to : gap.to }],
    ),
    thresholds: chart.thresholds.flatMap((span) =>
      span.to < from || span.from > to
        ? []
        : [{ ...span, from: span.from < from ? from : span.from, to: span.to > to ? to : span.to }],
    ),
    ticks: ticksOf(from, to),
    days: daysWithin(chart, { from, to }),
  };
};
