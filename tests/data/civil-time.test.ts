import { describe, expect, it } from 'vitest';
import { dayAt, instantAt, isZone, minuteOfDay } from '#data/civil-time.ts';

// Clock changes of 2026 by the time zone database: Europe/Lisbon forward on 29 March at 01:00, back on
// 25 October at 02:00; America/New_York forward on 8 March at 02:00.
describe('civil days and clock changes', () => {
  it('keeps the day right on the night the clock goes forward', () => {
    expect([
      dayAt(Date.parse('2026-03-28T23:59:00Z'), 'Europe/Lisbon'),
      dayAt(Date.parse('2026-03-29T00:59:00Z'), 'Europe/Lisbon'),
      minuteOfDay(Date.parse('2026-03-29T00:59:00Z'), 'Europe/Lisbon'),
      minuteOfDay(Date.parse('2026-03-29T01:00:00Z'), 'Europe/Lisbon'),
    ]).toEqual(['2026-03-28', '2026-03-29', 59, 120]);
  });

  it('keeps the day right on the night the clock goes back', () => {
    expect([
      dayAt(Date.parse('2026-10-24T23:30:00Z'), 'Europe/Lisbon'),
      minuteOfDay(Date.parse('2026-10-25T00:30:00Z'), 'Europe/Lisbon'),
      minuteOfDay(Date.parse('2026-10-25T01:30:00Z'), 'Europe/Lisbon'),
      dayAt(Date.parse('2026-10-25T23:59:00Z'), 'Europe/Lisbon'),
      dayAt(Date.parse('2026-10-26T00:00:00Z'), 'Europe/Lisbon'),
    ]).toEqual(['2026-10-25', 90, 90, '2026-10-25', '2026-10-26']);
  });

  it('moves a wall-clock time that the change skips forward', () => {
    expect(new Date(instantAt('2026-03-08', '02:30', 'America/New_York')).toISOString()).toBe(
      '2026-03-08T07:30:00.000Z',
    );
  });

  it('gives two people two zones apart their own day for one instant', () => {
    const instant = Date.parse('2026-06-10T23:30:00Z');
    expect([
      dayAt(instant, 'Atlantic/Azores'),
      dayAt(instant, 'Europe/Lisbon'),
      dayAt(instant, 'Europe/Athens'),
    ]).toEqual(['2026-06-10', '2026-06-11', '2026-06-11']);
  });

  it('knows a zone from a word that is none', () => {
    expect([isZone('Europe/Lisbon'), isZone('Mars/Olympus'), isZone('')]).toEqual([true, false, false]);
  });
});
