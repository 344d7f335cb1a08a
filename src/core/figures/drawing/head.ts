/** A head in profile, from the front or from behind: hair, face, ear. Units: half the height of a head. */
import { lengths } from '../body/lengths.ts';
import type { Skeleton } from '../body/skeleton.ts';
import { outline, type Stroke } from './strokes.ts';
import { type Projection, placedPath, type Spot } from './view.ts';

const profile = {
  skin: 'M0.05 -1C0.55 -1 0.8 -0.68 0.78 -0.3C0.77 -0.16 0.8 -0.1 0.86 0C0.92 0.1 0.98 0.16 0.93 0.22C0.9 0.26 0.83 0.24 0.82 0.3C0.8 0.38 0.84 0.4 0.81 0.48C0.79 0.54 0.84 0.62 0.8 0.74C0.74 0.9 0.5 0.92 0.3 0.84C0.1 0.76 -0.1 0.7 -0.25 0.72C-0.6 0.55 -0.84 0.1 -0.8 -0.3C-0.75 -0.75 -0.4 -1 0.05 -1Z',
  hair: 'M0.7 -0.66C0.45 -0.5 0.25 -0.5 0.18 -0.3C0.12 -0.1 0.14 0.04 0.04 0.06C-0.16 0.06 -0.14 0.3 -0.1 0.4C-0.16 0.6 -0.3 0.68 -0.45 0.6C-0.8 0.3 -0.95 -0.1 -0.86 -0.42C-0.72 -0.9 -0.3 -1.1 0.1 -1.06C0.4 -1.02 0.62 -0.9 0.7 -0.66Z',
};
const oval =
  'M0 -1C0.5 -1 0.74 -0.65 0.72 -0.15C0.7 0.4 0.4 0.95 0 0.95C-0.4 0.95 -0.7 0.4 -0.72 -0.15C-0.74 -0.65 -0.5 -1 0 -1Z';
const front = {
  skin: oval,
  hair: 'M-0.78 -0.05C-0.9 -0.8 -0.45 -1.1 0 -1.08C0.45 -1.1 0.9 -0.8 0.78 -0.05C0.66 -0.15 0.66 -0.4 0.55 -0.5C0.2 -0.42 -0.25 -0.45 -0.5 -0.58C-0.6 -0.45 -0.66 -0.2 -0.78 -0.05ZM-0.4 0.06L-0.22 0.06L-0.22 0.22L-0.4 0.22ZM0.22 0.06L0.4 0.06L0.4 0.22L0.22 0.22Z',
};
const back = {
  skin: oval,
  hair: 'M0 -1.06C0.6 -1.06 0.85 -0.6 0.8 -0.1C0.75 0.35 0.5 0.62 0 0.62C-0.5 0.62 -0.75 0.35 -0.8 -0.1C-0.85 -0.6 -0.6 -1.06 0 -1.06Z',
};

export const headOf = ({ points, frames }: Skeleton, eye: Projection): readonly Stroke[] => {
  const [forward, up, right] = frames.head;
  const half = lengths.head / 2;
  const scaled = ([x, y]: Spot, by: number): Spot => [x * half * by, y * half * by];
  const towards = eye.depth(forward);
  const isProfile = Math.abs(towards) < 0.75;
  const shape = isProfile ? profile : towards > 0 ? front : back;
  const across = isProfile ? forward : right;
  const place = (path: string) =>
    placedPath(path, eye.spot(points.head), scaled(eye.spot(across), 1), scaled(eye.spot(up), -1));
  return [
    { d: place(shape.skin), tone: 'ink', width: outline * 2, isFilled: true },
    { d: place(shape.skin), tone: 'paper', width: 0, isFilled: true },
    { d: place(shape.hair), tone: 'hair', width: 0, isFilled: true },
  ];
};
