/** From space to paper: x to the right, y down. */
import type { Vec } from '../body/turn.ts';
import type { View } from '../exercises/figure.ts';

export type Spot = readonly [x: number, y: number];

const turn = (degrees: number) =>
  [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)] as const;

export const projection = ({ round, up }: View) => {
  const [cosRound, sinRound] = turn(round);
  const [cosUp, sinUp] = turn(up);
  /** How near to the eye. */
  const depth = ([x, y, z]: Vec): number => (x * sinRound + z * cosRound) * cosUp + y * sinUp;
  const spot = ([x, y, z]: Vec): Spot => [
    x * cosRound - z * sinRound,
    (x * sinRound + z * cosRound) * sinUp - y * cosUp,
  ];
  return { spot, depth };
};
export type Projection = ReturnType<typeof projection>;

const short = (value: number): string => String(Math.round(value * 10) / 10);

export const pathThrough = (spots: readonly Spot[], closed = false): string =>
  `M${spots.map(([x, y]) => `${short(x)} ${short(y)}`).join('L')}${closed ? 'Z' : ''}`;

/** A path written as "M0 0C…" in the units of a part of the body, put where the part is. */
export const placedPath = (path: string, at: Spot, x: Spot, y: Spot): string =>
  path.replace(/(-?[\d.]+) (-?[\d.]+)/g, (_, right: string, down: string) => {
    const [r, d] = [Number(right), Number(down)];
    return `${short(at[0] + x[0] * r + y[0] * d)} ${short(at[1] + x[1] * r + y[1] * d)}`;
  });

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const boxAround = (boxes: readonly Box[]): Box => ({
  left: Math.min(...boxes.map(({ left }) => left)),
  top: Math.min(...boxes.map(({ top }) => top)),
  right: Math.max(...boxes.map(({ right }) => right)),
  bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
});

/** Every point a path names, with so much around it. */
export const boxOfPath = (path: string, around: number): Box => {
  const spots = [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  );
  return boxAround(
    spots.map(([x, y]) => ({ left: x - around, right: x + around, top: y - around, bottom: y + around })),
  );
};
