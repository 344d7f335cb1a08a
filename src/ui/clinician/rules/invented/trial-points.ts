/** What stands in the picture and in the table beside it: the same points, in the same words. */
import { say } from '#messages/en/staff/rules.ts';
import type { InventedPeople, TrialRow } from '../../answers.ts';
import type { MarkKind } from './mark-shape.tsx';

export interface TrialPoint extends TrialRow {
  /** Short, beside the mark; empty on the oracle's line, whose first point alone is named. */
  readonly label: string;
  readonly name: string;
  readonly kind: MarkKind;
}

const ownArm = 'own-rule';

export type ModelId = InventedPeople['models'][number]['id'];

/** The first in the order of the line, so that the name of the whole line stands at its beginning. */
const firstOnLine = 'oracle';

const pointOf = (row: TrialRow, place: number): TrialPoint => {
  if (row.arm === ownArm) return { ...row, label: say('own-label'), name: say('own-rule'), kind: 'own' };
  const name = row.title ?? row.arm;
  if (!row.onFrontier) return { ...row, label: row.arm.replaceAll('-', ' '), name, kind: place };
  return { ...row, label: row.arm === firstOnLine ? say('line-label') : '', name, kind: 'line' };
};

/** Arms in their order, the own rule after them, the line last. */
export const pointsFor = (rows: readonly TrialRow[], own: readonly TrialRow[], type: string) => {
  const ofType = rows.filter((row) => row.type === type);
  const arms = ofType.filter(({ onFrontier }) => !onFrontier);
  const line = ofType.filter(({ onFrontier }) => onFrontier);
  return [...arms, ...own.filter((row) => row.type === type), ...line].map(pointOf);
};

/** From 0 up to a whole multiple of the step above the largest value. */
export const axisFor = (values: readonly number[]): readonly number[] => {
  const most = Math.max(1, ...values) * 1.05;
  const step = [1, 2, 5, 10, 20].find((one) => most / one <= 6) ?? 20;
  const count = Math.ceil(most / step);
  return Array.from({ length: count + 1 }, (_, place) => place * step);
};

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

const lineHeight = 16;
/** Of a letter at the size of the words, rather too wide than too narrow. */
const letterWidth = 7.4;
const besideMark = 12;
const lines = [0, 1, -1, 2, -2, 3, -3, 4, -4];

const isFree = (box: Box, taken: readonly Box[]): boolean =>
  taken.every(
    (other) =>
      Math.abs(other.y - box.y) >= lineHeight - 1 ||
      other.x >= box.x + box.width ||
      other.x + other.width <= box.x,
  );

/**
 * Where the words go: right of the mark or left of it, a line or more up or down where both are taken, never
 * over an earlier word or a mark and never over the edge.
 */
export const placeLabels = (
  marks: readonly { readonly x: number; readonly y: number; readonly label: string }[],
  { left, right }: { readonly left: number; readonly right: number },
): readonly Box[] => {
  const taken: Box[] = marks.map(({ x, y }) => ({ x: x - 8, y, width: 16 }));
  return marks.map(({ x, y, label }) => {
    const width = label.length * letterWidth;
    const places = lines
      .flatMap((line) =>
        [x + besideMark, x - besideMark - width].map((at) => ({ x: at, y: y + line * lineHeight, width })),
      )
      .filter((box) => box.x >= left && box.x + width <= right);
    const box = places.find((place) => isFree(place, taken)) ?? places[0] ?? { x: left, y, width };
    if (label) taken.push(box);
    return box;
  });
};
