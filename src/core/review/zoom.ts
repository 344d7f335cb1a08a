/** A stretch of the picture, from two weeks on; what lies outside is left out and nothing is drawn anew. */
import { addDays, type Day, daysBetween } from '../day.ts';
import { type Picture, roundTop, ticksOf } from './picture.ts';

export const shortestRange = 14;

export interface DateRange {
  readonly from: Day;
  readonly to: Day;
}

/** Kept inside the picture and at least two weeks long; the end that was moved gives way. */
export const rangeWithin = (
  picture: Pick<Picture, 'since' | 'today'>,
  wanted: DateRange,
  moved: keyof DateRange,
): DateRange => {
  const least = Math.min(shortestRange, daysBetween(picture.since, picture.today));
  const clamp = (day: Day, low: Day, high: Day): Day => (day < low ? low : day > high ? high : day);
  if (moved === 'from') {
    const to = clamp(wanted.to, addDays(picture.since, least), picture.today);
    return { from: clamp(wanted.from, picture.since, addDays(to, -least)), to };
  }
  const from = clamp(wanted.from, picture.since, addDays(picture.today, -least));
  return { from, to: clamp(wanted.to, addDays(from, least), picture.today) };
};

export const zoomed = (picture: Picture, { from, to }: DateRange): Picture => {
  if (from <= picture.since && to >= picture.today) return picture;
  const isWithin = ({ day }: { readonly day: Day }): boolean => day >= from && day <= to;
  const loads = picture.loads.filter(isWithin);
  const known = loads.flatMap((load) => (load.value === null ? [] : [load.value]));
  return {
    ...picture,
    since: from,
    today: to,
    loadTop: roundTop(Math.max(0, ...known)),
    loads,
    // The step that began before the stretch still holds in it, so one mark before is kept.
    stairs: picture.stairs.flatMap((stair) => {
      const first = stair.findIndex(isWithin);
      const inside = stair.filter(isWithin);
      if (inside.length === 0) return [];
      return [first > 0 ? [{ ...stair[first - 1]!, day: from }, ...inside] : inside];
    }),
    pains: picture.pains.filter(isWithin),
    markers: picture.markers.filter((marker) => marker.day >= from && marker.day <= to),
    gaps: picture.gaps.flatMap((gap) =>
      gap.to < from || gap.from > to
        ? []
        : [{ ...gap, from: gap.from < from ? from : gap.from, to: gap.to > to ? to : gap.to }],
    ),
    thresholds: picture.thresholds.flatMap((span) =>
      span.to < from || span.from > to
        ? []
        : [{ ...span, from: span.from < from ? from : span.from, to: span.to > to ? to : span.to }],
    ),
    ticks: ticksOf(from, to),
    days: picture.days.filter(isWithin),
  };
};
