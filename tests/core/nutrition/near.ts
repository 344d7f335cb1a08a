/** The check tables give a tolerance with each figure, in the unit of the figure. */
import { expect } from 'vitest';

export const near = (actual: number | null | undefined, expected: number, tolerance: number): void => {
  expect(typeof actual, `${actual} is no number`).toBe('number');
  expect(Math.abs((actual as number) - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(
    tolerance,
  );
};
