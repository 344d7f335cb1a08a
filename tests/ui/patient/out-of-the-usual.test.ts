/** Days out of the usual: a morning check outside its hours, another day on the phone than at the clinic. */
import { describe, expect, it } from 'vitest';
import { dayState } from '#ui/patient/day-state.ts';
import type { Saved } from '#ui/patient/outbox/outbox.ts';
import { isOutOfTheUsual } from '#ui/patient/today/out-of-the-usual.ts';
import { momentOf, viewOnDay } from '#ui/patient/view-on-day.ts';
import { today } from './views.ts';

const day = '2026-03-09';
const morning = {
  due: true,
  answered: false,
  yesterdayOpen: false,
  canBeLate: true,
  fromHour: 4,
  toHour: 14,
  state: 'open' as const,
  entryId: null,
  twice: null,
};
const view = today({ morning });
/** On the phone's own clock, whatever zone the test runs in. */
const at = (hour: number, minute = 0) => new Date(2026, 2, 9, hour, minute).getTime();
const viewAt = (hour: number, minute = 0, given = view) =>
  viewOnDay(given, day, { ...momentOf(given, at(hour, minute)), clinicDay: day });
const answeredAt = (hour: number, minute = 0, status: Saved['status'] = 'stored'): Saved => ({
  entryId: `at-${hour}`,
  ownerId: 'p',
  kind: 'morning',
  entry: null,
  encrypted: null,
  day,
  savedAt: at(hour, minute),
  isUrgent: false,
  status,
  early: 0,
  clockDoubtful: false,
});

describe('the morning check', () => {
  it.each([
    [3, 59, false, 'early'],
    [4, 0, true, undefined],
    [13, 59, true, undefined],
    [14, 0, false, 'over'],
    [16, 0, false, 'over'],
    [0, 8, false, 'early'],
  ] as const)('at %i:%i is due: %s', (hour, minute, isDue, outside) => {
    const state = dayState(viewAt(hour, minute), [], at(hour, minute));
    expect(state.isMorningDue).toBe(isDue);
    expect(state.morningOutside?.now).toBe(outside);
  });

  it('keeps to the hours a clinic has chosen', () => {
    const later = today({ morning: { ...morning, fromHour: 6, toHour: 16 } });
    expect(dayState(viewAt(5, 59, later), [], 0).isMorningDue).toBe(false);
    expect(dayState(viewAt(15, 59, later), [], 0).isMorningDue).toBe(true);
  });

  it('given at an hour that does not count is kept, is not called done, and is asked again in its hours', () => {
    const night = [answeredAt(0, 8)];
    const early = dayState(viewAt(0, 30), night, at(0, 30));
    expect([early.isMorningAnswered, early.morningOutside]).toEqual([false, { now: 'early', isKept: true }]);
    const inside = dayState(viewAt(8), night, at(8));
    expect([inside.isMorningDue, inside.morningToChange]).toEqual([true, 'at-0']);
  });

  it('given in the afternoon is kept and said to have come too late', () => {
    const state = dayState(viewAt(16), [answeredAt(15)], at(16));
    expect([state.isMorningAnswered, state.morningOutside]).toEqual([false, { now: 'over', isKept: true }]);
  });

  it('given in its hours is done for the day', () => {
    for (const hour of [9, 16]) {
      const state = dayState(viewAt(hour), [answeredAt(8)], at(hour));
      expect([state.isMorningDue, state.isMorningAnswered, state.morningOutside]).toEqual([
        false,
        true,
        null,
      ]);
    }
  });

  it('answered on another phone can be changed here, in place of what the clinic has', () => {
    const other = today({ morning: { ...morning, due: false, answered: true, entryId: 'theirs' } });
    const state = dayState(viewAt(9, 0, other), [], at(9));
    expect([state.isMorningAnswered, state.morningToChange]).toEqual([true, 'theirs']);
  });
});

describe('another day on the phone than at the clinic', () => {
  const noon = Date.parse('2026-03-09T23:30:00Z');

  it('the clinic’s day is read in its own zone, from the same instant', () => {
    const inZone = (zone: string) => momentOf({ ...view, clinic: { ...view.clinic, zone } }, noon).clinicDay;
    expect([inZone('UTC'), inZone('Europe/Berlin'), inZone('America/New_York')]).toEqual([
      '2026-03-09',
      '2026-03-10',
      '2026-03-09',
    ]);
  });

  it('makes no page old by itself: only the clinic’s day does', () => {
    const ahead = viewOnDay(view, '2026-03-10', { day: '2026-03-10', clinicDay: day, morning: 'open' });
    expect([ahead.day, ahead.givenOn, ahead.clinicDay]).toEqual(['2026-03-10', null, day]);
    const old = viewOnDay(view, '2026-03-10', {
      day: '2026-03-10',
      clinicDay: '2026-03-10',
      morning: 'open',
    });
    expect(old.givenOn).toBe(day);
  });

  it('counts for the phone’s day, behind the clinic’s as well, with what is recorded of that day', () => {
    const recordedDays = { sessions: ['2026-03-08', day], mornings: ['2026-03-08'] };
    const given = today({ morning, sessionSent: true, recordedDays });
    const on = (of: string) => viewOnDay(given, of, { day: of, clinicDay: day, morning: 'open' });
    const behind = on('2026-03-08');
    expect([behind.day, behind.sessionSent, behind.morning.answered, behind.morning.due]).toEqual([
      '2026-03-08',
      true,
      true,
      false,
    ]);
    expect(on('2026-03-10').sessionSent).toBe(false);
    // An answer is changed on the clinic's own day alone.
    expect(
      dayState({ ...behind, morning: { ...behind.morning, entryId: 'e' } }, [], 0).morningToChange,
    ).toBeNull();
  });
});

describe('today’s page speaks of it', () => {
  const state = dayState(viewAt(9), [], at(9));
  const told = (lacksMs: number, given = viewAt(9)) => isOutOfTheUsual({ view: given, state, lacksMs });

  // Five minutes: chosen; the server doubts an entry from ten on.
  it('from a clock five minutes off on, in either direction, and no longer once it is right', () => {
    const minute = 60_000;
    expect([
      told(4.99 * minute),
      told(5 * minute),
      told(-5 * minute),
      told(24 * 60 * minute),
      told(0),
    ]).toEqual([false, true, true, true, false]);
  });

  it('where two phones answered and nobody said which counts', () => {
    const pains = [{ joint: 'right-knee' as const, pain: 2 }];
    const twice = { first: { entryId: 'a', pains }, last: { entryId: 'b', pains } };
    expect(told(0, viewAt(9, 0, today({ morning: { ...morning, twice } })))).toBe(true);
  });
});
