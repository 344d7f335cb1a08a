import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import {
  kilogramsFromPounds,
  metresPerFoot,
  metresPerInch,
  newtonsPerPoundForce,
  poundsFromKilograms,
  times,
} from '#core/units/units.ts';

/** Another hand's sums: the general-purpose unit library js-quantities 1.8.0. */
const byLibrary = (value: number, from: string, to: string): number => Qty(value, from).to(to).scalar;

const close = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-12 * Math.max(1, Math.abs(a), Math.abs(b));

describe('units agree with a general-purpose unit library over generated values', () => {
  const value = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
  const pairs: readonly (readonly [string, (x: number) => number, string, string])[] = [
    ['pounds to kilograms', kilogramsFromPounds, 'lb', 'kg'],
    ['kilograms to pounds', poundsFromKilograms, 'kg', 'lb'],
    ['pound-force to newtons', (x) => times(x, newtonsPerPoundForce), 'gee*lb', 'N'],
    ['inches to metres', (x) => times(x, metresPerInch), 'in', 'm'],
    ['feet to metres', (x) => times(x, metresPerFoot), 'ft', 'm'],
  ];

  it.each(pairs)('%s', (_title, ours, from, to) => {
    const property = fc.property(value, (x) => close(ours(x), byLibrary(x, from, to)));
    const found = fc.check(property, { seed: 20260131, numRuns: 10_000 });
    expect([found.failed, found.counterexample]).toEqual([false, null]);
  });
});
