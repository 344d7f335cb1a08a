import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { weekdayOf } from '#core/prescribing/programme/planned-sessions.ts';
import { addDays, ageYears, daysBetween, isDay } from '#core/time/day.ts';

/** Another hand's calendar: the proposed standard of the language, Temporal, in its published polyfill. */
const day = fc
  .record({ year: fc.integer({ min: 1900, max: 2200 }), ordinal: fc.integer({ min: 1, max: 366 }) })
  .map(({ year, ordinal }) => Temporal.PlainDate.from({ year, month: 1, day: 1 }).add({ days: ordinal - 1 }));

const holds = (
  property: fc.IProperty<unknown> | fc.IProperty<[Temporal.PlainDate, Temporal.PlainDate]>,
): boolean => !fc.check(property as fc.IProperty<unknown>, { seed: 20260131, numRuns: 10_000 }).failed;

describe('civil days agree with the calendar of a date library over generated days', () => {
  it('days between, days added, weekdays and completed years', () => {
    const property = fc.property(day, day, (a, b) => {
      const [from, to] = [a.toString(), b.toString()];
      const apart = a.until(b, { largestUnit: 'day' }).days;
      const [young, old] = Temporal.PlainDate.compare(a, b) <= 0 ? [a, b] : [b, a];
      // Born on 29 February: the library counts the birthday from 28 February on, the rule from 1 March.
      const isLeapling = young.month === 2 && young.day === 29;
      return (
        daysBetween(from, to) === apart &&
        addDays(from, apart) === to &&
        weekdayOf(from) === a.dayOfWeek &&
        (isLeapling ||
          ageYears(young.toString(), old.toString()) === young.until(old, { largestUnit: 'year' }).years)
      );
    });
    expect(holds(property)).toBe(true);
  });

  it('which days exist', () => {
    const parts = fc.record({
      y: fc.integer({ min: 1900, max: 2199 }),
      m: fc.integer({ min: 0, max: 14 }),
      d: fc.integer({ min: 0, max: 33 }),
    });
    const exists = (text: string): boolean => {
      try {
        Temporal.PlainDate.from(text, { overflow: 'reject' });
        return true;
      } catch {
        return false;
      }
    };
    const property = fc.property(parts, ({ y, m, d }) => {
      const text = `${y}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`;
      return isDay(text) === exists(text);
    });
    expect(fc.check(property, { seed: 20260131, numRuns: 10_000 }).failed).toBe(false);
  });
});
