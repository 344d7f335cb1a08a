/** What stands still: chair, wall, table, mat. Places are forward and up; the floor is at 0. */
import type { Vec } from '../body/turn.ts';
import type { Prop } from './figure.ts';

const flat = (...places: readonly (readonly [number, number])[]): readonly Vec[] =>
  places.map(([x, y]): Vec => [x, y, 0]);

export const lines = (...all: readonly (readonly (readonly [number, number])[])[]): Prop => ({
  lines: all.map((places) => flat(...places)),
});
export const solid = (...places: readonly (readonly [number, number])[]): Prop => ({
  lines: [flat(...places)],
  isSolid: true,
});

export const floor = (from: number, to: number): Prop =>
  lines([
    [from, 0],
    [to, 0],
  ]);

/** Seen from the side: the back stands at `x`, the seat goes forward. */
export const chair = (x: number, seat: number, deep = 38): Prop =>
  lines(
    [
      [x - 4, seat + 44],
      [x, seat],
      [x + deep, seat],
      [x + deep, 0],
    ],
    [
      [x + 1, seat],
      [x + 1, 0],
    ],
  );
export const stool = (x: number, seat: number, deep = 34): Prop =>
  lines([
    [x, 0],
    [x, seat],
    [x + deep, seat],
    [x + deep, 0],
  ]);
/** A chair to hold on to: its back stands towards the body. */
export const chairBack = (x: number, high: number): Prop =>
  lines(
    [
      [x, high],
      [x, 0],
    ],
    [
      [x, 38],
      [x + 34, 38],
      [x + 34, 0],
    ],
    [
      [x - 4, high],
      [x + 5, high],
    ],
  );
export const worktop = (from: number, to: number, high: number): Prop =>
  lines(
    [
      [from, high],
      [to, high],
    ],
    [
      [from + 4, high],
      [from + 4, 0],
    ],
    [
      [to - 4, high],
      [to - 4, 0],
    ],
  );
export const wall = (x: number, high = 158): Prop =>
  lines([
    [x, 0],
    [x, high],
  ]);
export const step = (from: number, to: number, high: number): Prop =>
  solid([from, 0], [from, high], [to, high], [to, 0]);
export const post = (x: number, high: number): Prop =>
  lines([
    [x, 0],
    [x, high],
  ]);
export const hook = (x: number, y: number): Prop =>
  lines([
    [x - 16, y],
    [x + 16, y],
  ]);

/** Round things, seen end on. */
export const roll = (x: number, y: number, radius: number, z = 0, tall = 1): Prop => ({
  isSolid: true,
  lines: [
    Array.from({ length: 14 }, (_, at): Vec => {
      const angle = (at * Math.PI) / 7;
      return [x + radius * Math.cos(angle), y + radius * tall * Math.sin(angle), z];
    }),
  ],
});
