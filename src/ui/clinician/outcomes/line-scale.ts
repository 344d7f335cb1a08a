/** Where the readings of a measure stand in its picture: days along one axis for all measures, figures by its own. */
import type { Drawn, Figure } from '#core/assessment/course/drawn.ts';
import { type Day, daysBetween } from '#core/time/day.ts';

export const width = 480;
export const height = 132;
/** On the right the names of several courses have their room. */
const plot = { left: 44, right: 376, top: 16, foot: 120 } as const;

export interface Span {
  readonly from: Day;
  readonly to: Day;
}

export const lowOf = (figure: Figure): number => (typeof figure === 'number' ? figure : figure.low);
export const highOf = (figure: Figure): number => (typeof figure === 'number' ? figure : figure.high);

const round = (value: number): number => Math.round(value * 10) / 10;

export const xOf =
  ({ from, to }: Span) =>
  (day: Day): number =>
    round(
      plot.left + (daysBetween(from, day) / Math.max(1, daysBetween(from, to))) * (plot.right - plot.left),
    );

/** A first reading stands alone where its error is drawn around it. */
const firstOf = ({ courses }: Drawn): Figure | null => courses[0]?.points[0]?.figure ?? null;

/** What a difference must leave to be called a change; drawn where there is one course to draw it around. */
export const errorBand = (drawn: Drawn): readonly [number, number] | null => {
  const first = firstOf(drawn);
  return drawn.courses.length === 1 && drawn.error !== null && typeof first === 'number'
    ? [first - drawn.error, first + drawn.error]
    : null;
};

const stepFor = (range: number): number => {
  const raw = range / 4;
  const power = 10 ** Math.floor(Math.log10(raw));
  return [1, 2, 5, 10].map((one) => one * power).find((one) => one >= raw - 1e-9) ?? power;
};

const ticksFrom = (low: number, high: number): readonly number[] => {
  const step = stepFor(high - low);
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_, place) => round((first + place) * step * 10) / 10);
};

export interface LineScale {
  readonly y: (figure: number) => number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
  readonly left: number;
  readonly right: number;
}

export const lineScale = (drawn: Drawn): LineScale => {
  const figures = drawn.courses.flatMap(({ points }) => points.map(({ figure }) => figure));
  const all = [
    ...figures.flatMap((figure) => [lowOf(figure), highOf(figure)]),
    ...(errorBand(drawn) ?? []),
    ...(drawn.cut ? [drawn.cut.at] : []),
    ...(drawn.grades ? [0, drawn.grades.length - 1] : []),
  ];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  // One reading alone, or one range, does not fill the picture.
  const air = Math.max((most - least) * 0.08, Math.abs(most) * 0.05, most === least ? 1 : 0);
  const [low, high] = [least >= 0 ? Math.max(0, least - air) : least - air, most + air];
  const ticks = drawn.grades
    ? drawn.grades.map((text, at) => ({ at, text }))
    : ticksFrom(low, high).map((at) => ({ at, text: String(at) }));
  return {
    y: (figure) => round(plot.foot - ((figure - low) / (high - low)) * (plot.foot - plot.top)),
    ticks,
    left: plot.left,
    right: plot.right,
  };
};

export interface Name {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

const lineHeight = 12;

/** Names of courses that end alike stand under one another. */
export const apart = (names: readonly Name[]): readonly Name[] => {
  const placed: Name[] = [];
  for (const name of names.toSorted((a, b) => a.y - b.y)) {
    const above = placed.at(-1);
    placed.push(above ? { ...name, y: Math.max(name.y, above.y + lineHeight) } : name);
  }
  return placed;
};
