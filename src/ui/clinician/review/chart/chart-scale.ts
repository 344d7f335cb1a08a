/**
 * Where days, loads and pain stand in the drawing: load in the upper panel, the decisions below it, pain hanging
 * beneath from 0 to the worst there is. Heights are fixed, so that what stands beside the picture shares its scale.
 */
import type { LoadRange } from '#core/review/chart-steps.ts';
import type { ReviewChart } from '#core/review/review-chart.ts';
import { type Day, dayNumber } from '#core/time/day.ts';

/** Above the panels: the title, and the flares with their length. */
export const headHeight = 34;
/** Room for a name over the highest step. */
const nameHeight = 16;
const doseHeight = 124;
/** Below the lowest step: its name, the decisions, the row of missing answers. */
const laneHeight = 60;
/** Under the decisions, where days that would have been others are shown. */
const othersHeight = 20;
const axisHeight = 22;
/** Below the worst pain, so that no line lies on the axis. */
const footHeight = 5;
const mostPerPoint = 15;
const mostPainHeight = 120;

const loadHead = headHeight + nameHeight;
export const loadFoot = loadHead + doseHeight;
const painHeadOf = ({ others }: Pick<ReviewChart, 'others'>): number =>
  loadFoot + laneHeight + (others.length > 0 ? othersHeight : 0);

const perPointOf = ({ painFoot }: Pick<ReviewChart, 'painFoot'>): number =>
  Math.min(mostPerPoint, mostPainHeight / painFoot);

export const margin = { top: headHeight, right: 12, bottom: axisHeight, left: 54 } as const;

export const chartHeight = (chart: Pick<ReviewChart, 'painFoot' | 'others'>): number =>
  painHeadOf(chart) + chart.painFoot * perPointOf(chart) + footHeight + axisHeight;

export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What lies far below the rest stands at the foot, under a break of the axis. */
const belowHeight = 14;
const breakHeight = 27;

const mainHeightOf = ({ below }: LoadRange): number =>
  below ? doseHeight - breakHeight - (below.high > below.low ? belowHeight : 0) : doseHeight;

/** Middle of the break in the axis; null = it has none. */
export const breakY = (range: LoadRange): number | null =>
  range.below ? loadHead + mainHeightOf(range) + breakHeight / 2 : null;

export const loadY =
  (range: LoadRange) =>
  (value: number): number => {
    const { low, high, below } = range;
    if (below && value <= below.high)
      return loadFoot - ((value - below.low) / (below.high - below.low || 1)) * belowHeight;
    return loadHead + ((high - value) / (high - low)) * mainHeightOf(range);
  };

/** Domain of the load axis over the height of both panels. */
export const loadDomain = (
  chart: Pick<ReviewChart, 'painFoot' | 'others' | 'loadRange'>,
): [number, number] => {
  const { low, high } = chart.loadRange;
  const perPixel = (high - low) / mainHeightOf(chart.loadRange);
  const top = high + nameHeight * perPixel;
  return [top - (chartHeight(chart) - headHeight - axisHeight) * perPixel, top];
};

export const dayDomain = ({ since, today }: Pick<ReviewChart, 'since' | 'today'>): [number, number] => [
  dayNumber(since) - 0.5,
  dayNumber(today) + 0.5,
];

/** Within one day the morning stands left and the session right, a quarter of a day from its middle. */
export const quarter = 0.25;

export const scaleFor = (area: Area, chart: ReviewChart) => {
  const [first, last] = dayDomain(chart);
  const perPoint = perPointOf(chart);
  const painHead = painHeadOf(chart);
  const dayWidth = area.width / (last - first);
  const xOf = (number: number): number => area.x + ((number - first) / (last - first)) * area.width;
  return {
    x: (day: Day): number => xOf(dayNumber(day)),
    xOf,
    morningX: (day: Day): number => xOf(dayNumber(day) - quarter),
    sessionX: (day: Day): number => xOf(dayNumber(day) + quarter),
    load: loadY(chart.loadRange),
    pain: (value: number): number => painHead + value * perPoint,
    /** Half of a mark: two of one day stand side by side. Never below what can be seen. */
    half: Math.max(1.2, Math.min(3.5, dayWidth * quarter)),
    /** The day under a point. */
    dayNumberAt: (x: number): number => Math.round(first + ((x - area.x) / area.width) * (last - first)),
    top: area.y,
    loadFoot,
    lane: loadFoot + 30,
    others: loadFoot + 49,
    painHead,
    foot: painHead + chart.painFoot * perPoint + footHeight,
  };
};

export type Scale = ReturnType<typeof scaleFor>;

/** Those of the values, in the order given, whose label has room beside the ones before. */
export const withRoom = <T>(values: readonly T[], y: (value: T) => number, room: number): readonly T[] => {
  const placed: T[] = [];
  for (const value of values)
    if (placed.every((other) => Math.abs(y(other) - y(value)) >= room)) placed.push(value);
  return placed;
};

const weight = { pause: 0, 'ease-back': 1, progress: 2, hold: 3 } as const;

/**
 * Gates whose glyph has room: the most cautious first. A gate without room keeps its line and its
 * place in the order of the keyboard.
 */
export const markersWithRoom = (
  markers: ReviewChart['markers'],
  x: (day: Day) => number,
  room: number,
): ReadonlySet<string> => {
  const cautiousFirst = [...markers].sort((a, b) => weight[a.word] - weight[b.word]);
  return new Set(withRoom(cautiousFirst, ({ day }) => x(day), room).map(({ id }) => id));
};
