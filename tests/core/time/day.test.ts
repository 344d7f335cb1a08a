import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, ageYears, daysBetween, isDay } from '#core/time/day.ts';

describe('civil days', () => {
  it('refuses a day that does not exist and accepts the leap day', () => {
    expect([
      isDay('2026-02-29'),
      isDay('2028-02-29'),
      isDay('2026-13-01'),
      isDay('2026-1-01'),
      isDay(''),
    ]).toEqual([false, true, false, false, false]);
  });

  it.each([
    ['1899-12-31', false],
    ['1900-01-01', true],
    ['2199-12-31', true],
    ['2200-01-01', false],
    ['0001-01-01', false],
    ['9999-12-31', false],
  ])('takes days of years in which somebody here lives, and no others: %s is %s', (text, exists) => {
    expect(isDay(text)).toBe(exists);
  });

  it('agrees with the calendar of the platform over generated days', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -20_000, max: 40_000 }),
        fc.integer({ min: -400, max: 400 }),
        (start, step) => {
          const day = new Date(start * 86_400_000).toISOString().slice(0, 10);
          const expected = new Date((start + step) * 86_400_000).toISOString().slice(0, 10);
          return addDays(day, step) === expected && daysBetween(day, expected) === step;
        },
      ),
    );
  });

  it('counts completed years: the day before, on and after the birthday', () => {
    expect([
      ageYears('1961-05-10', '2026-05-09'),
      ageYears('1961-05-10', '2026-05-10'),
      ageYears('1961-05-10', '2026-05-11'),
    ]).toEqual([64, 65, 65]);
  });
});
