/** How much more a dose asks than the one in force is said from a step on, and never guessed. */
import { expect, it } from 'vitest';
import { askedMore, mostAskedPercent } from '#core/prescribing/asked-more.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { kneeDose } from '#tests/core/decision/small-record.ts';

const fifty = { ...kneeDose, repetitions: { low: 50, high: 50 }, sets: 2, sessionsPerWeek: 2 } as Dose;
const asked = (count: number, sessionsPerWeek = 2) =>
  ({ ...fifty, repetitions: { low: count, high: count }, sessionsPerWeek }) as Dose;

it('is said over a tenth: 8, 10 and 12 %', () => {
  expect([54, 55, 56].map((count) => mostAskedPercent(fifty, asked(count)))).toEqual([null, null, 12]);
});

it('of a week takes in the sessions added: three of 56 in place of two of 50 are 68 % more', () => {
  expect(askedMore(fifty, asked(56, 3))).toEqual({ sessionPercent: 12, weekPercent: 68 });
  expect(mostAskedPercent(fifty, asked(56, 3))).toBe(68);
});

it('is not said of a week that has no more sessions, nor of a dose that asks less', () => {
  expect(askedMore(fifty, asked(56, 2)).weekPercent).toBeNull();
  expect(mostAskedPercent(fifty, asked(40, 1))).toBeNull();
});

it('is not known where a load is not: nothing is said', () => {
  expect(mostAskedPercent(fifty, { ...asked(100), loadKg: null } as unknown as Dose)).toBeNull();
});
