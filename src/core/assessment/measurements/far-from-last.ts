/**
 * How far a new measurement lies from the last one of the very same thing, and from where on that is asked
 * about before it is kept.
 */
import { measureOf } from '../measures/registry.ts';
import type { Measurement } from './measurement.ts';

/** Whether two measurements are of the same kind, limb, side, place and way of measuring. */
export const isSameSubject = (one: Measurement, other: Measurement): boolean => {
  const [a, b] = [one, other] as unknown as readonly [Record<string, unknown>, Record<string, unknown>];
  const { sameBy = [] } = measureOf(one.kind);
  return one.kind === other.kind && sameBy.every((field) => a[field] === b[field]);
};

/** A question for each value far from the last one of the same thing; empty when all are near, or there is none. */
export const farFromLast = (row: Measurement, previous: Measurement | null): readonly string[] => {
  const { farFromLast: asked } = measureOf(row.kind);
  if (!previous || !asked || !isSameSubject(row, previous)) return [];
  const lastFigures = asked.figures(previous);
  return asked.figures(row).flatMap((now, place) => {
    const last = lastFigures[place];
    if (!last || last.value === 0) return [];
    const change = (Math.abs(now.value - last.value) / last.value) * 100;
    if (change <= asked.percent) return [];
    return [
      `${now.value} ${now.unit} is ${change.toFixed(0)} % away from ${last.value} ${last.unit} on ${previous.day}. Is it right?`,
    ];
  });
};
