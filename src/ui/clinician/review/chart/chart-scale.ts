/**
 * Where days, loads and pain stand in the drawing: load in the upper panel, one axis of days below
 * it, pain hanging beneath, no pain at the axis and the worst at the foot.
 */

import type { ReviewChart } from '#core/review/review-chart.ts';
import { type Day, dayNumber } from '#core/time/day.ts';

/** Shares of the height, from the top. */
const panels = { loadFoot: 0.4, painHead: 0.6 } as const;

const worstPain = 10;

export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Domain of the load axis that keeps the load in the upper panel of the whole height. */
export const loadDomain = (top: number): [number, number] => [top - top / panels.loadFoot, top];

export const dayDomain = ({ since, today }: Pick<ReviewChart, 'since' | 'today'>): [number, number] => [
  dayNumber(since) - 0.5,
  dayNumber(today) + 0.5,
];

export const scaleFor = (area: Area, chart: ReviewChart) => {
  const [first, last] = dayDomain(chart);
  const loadFoot = area.y + area.height * panels.loadFoot;
  const painHead = area.y + area.height * panels.painHead;
  return {
    x: (day: Day): number => area.x + ((dayNumber(day) - first) / (last - first)) * area.width,
    xOf: (number: number): number => area.x + ((number - first) / (last - first)) * area.width,
    load: (value: number): number => loadFoot - (value / chart.loadTop) * (loadFoot - area.y),
    pain: (value: number): number => painHead + (value / worstPain) * (area.y + area.height - painHead),
    /** Width of one day, for marks that must not run into each other. */
    dayWidth: area.width / (last - first),
    /** The day under a point. */
    dayNumberAt: (x: number): number => Math.round(first + ((x - area.x) / area.width) * (last - first)),
    top: area.y,
    loadFoot,
    painHead,
    foot: area.y + area.height,
  };
};

export type Scale = ReturnType<typeof scaleFor>;

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
  const placed: { id: string; at: number }[] = [];
  for (const marker of [...markers].sort((a, b) => weight[a.word] - weight[b.word])) {
    const at = x(marker.day);
    if (placed.every((other) => Math.abs(other.at - at) >= room)) placed.push({ id: marker.id, at });
  }
  return new Set(placed.map((marker) => marker.id));
};
