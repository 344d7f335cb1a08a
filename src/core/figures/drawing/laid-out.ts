/** The pictures of one drawing in their places: beside each other, or under each other where they are wide and low. */
import type { Picture } from './picture.ts';
import { boxAround, type Spot } from './view.ts';

const margin = 3;
const gap = 20;
const roomForNumber = 16;

export interface LaidOut {
  /** Corner and size of the box that each picture is drawn in. */
  readonly left: number;
  readonly top: number;
  readonly wide: number;
  readonly high: number;
  readonly isNumbered: boolean;
  /** Where each picture stands. */
  readonly places: readonly Spot[];
  /** Where the number of a picture stands, from its place. */
  readonly numeral: Spot;
  readonly whole: Spot;
}

export const laidOut = (pictures: readonly Picture[]): LaidOut => {
  // One room for all, so that what stands still stays.
  const box = boxAround(pictures.map((picture) => picture.box));
  const [left, top] = [box.left - margin, box.top - margin];
  const [wide, high] = [box.right + margin - left, box.bottom + margin - top];
  const isNumbered = pictures.length > 1;
  const isStacked = isNumbered && wide > 1.5 * high;
  const room = isNumbered ? roomForNumber : 0;
  const places = pictures.map(
    (_, at): Spot => [isStacked ? room : at * (wide + gap), isStacked ? at * (high + gap / 2) : room],
  );
  const [lastX, lastY] = places.at(-1)!;
  const numeral: Spot = isStacked ? [2 - roomForNumber, 14] : [2, -4];
  return { left, top, wide, high, isNumbered, places, numeral, whole: [lastX + wide, lastY + high] };
};
