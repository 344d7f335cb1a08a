import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  linesOn,
  type Programme,
  plannedSessions,
  type Weekday,
} from '#core/prescribing/programme/planned-sessions.ts';
import { addDays } from '#core/time/day.ts';
import { holdsIn } from '#tests/support/holds.ts';

const first = '2025-12-20';

const programme = fc.record({
  version: fc.integer({ min: 1, max: 6 }),
  fromDay: fc.integer({ min: -10, max: 60 }).map((days) => addDays(first, days)),
  lines: fc.array(
    fc.record({
      itemId: fc.constantFrom('a', 'b'),
      weekdays: fc.subarray([1, 2, 3, 4, 5, 6, 7] as Weekday[]),
    }),
    { maxLength: 3 },
  ),
});

const dayByDay = (programmes: readonly Programme[], from: string, to: string) => {
  const days: string[] = [];
  for (let day = from; day <= to; day = addDays(day, 1)) {
    if ((linesOn(programmes, day) ?? []).length > 0) days.push(day);
  }
  return days;
};

describe('the days on which somebody was to train', () => {
  it('are the weekdays of the programme that held, through changes of programme and over the new year', () => {
    const old: Programme = {
      version: 1,
      fromDay: '2025-12-22',
      lines: [{ itemId: 'a', weekdays: [1, 5] }],
    };
    const next: Programme = {
      version: 2,
      fromDay: '2026-01-01',
      lines: [{ itemId: 'a', weekdays: [4] }],
    };
    // 22 December 2025 was a Monday, 1 January 2026 a Thursday.
    expect(plannedSessions([old, next], '2025-12-20', '2026-01-08').map((one) => one.day)).toEqual([
      '2025-12-22',
      '2025-12-26',
      '2025-12-29',
      '2026-01-01',
      '2026-01-08',
    ]);
  });

  it('are the same as when every day is looked up by itself, whatever programmes were written', () => {
    holdsIn(
      500,
      fc.array(programme, { maxLength: 5 }),
      fc.integer({ min: -1, max: 70 }),
      (written, length) => {
        const to = addDays(first, length);
        const days = plannedSessions(written, first, to).map((one) => one.day);
        expect(days).toEqual(dayByDay(written, first, to));
      },
    );
  });
});
