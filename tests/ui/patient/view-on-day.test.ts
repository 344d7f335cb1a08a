/** A phone without signal reads yesterday's page as today's, within what the clinic allows. */
import { describe, expect, it } from 'vitest';
import { dayState } from '#ui/patient/day-state.ts';
import type { Saved } from '#ui/patient/outbox/outbox.ts';
import { phoneDay, viewOnDay } from '#ui/patient/view-on-day.ts';
import { exercise, today, weightDose } from './views.ts';

/** 9 March 2026 was a Monday. */
const monday = '2026-03-09';
const saved = (more: Partial<Saved>): Saved => ({
  entryId: 'e',
  ownerId: 'p',
  kind: 'session',
  entry: null,
  encrypted: null,
  day: monday,
  savedAt: 0,
  isUrgent: false,
  status: 'waiting',
  early: 0,
  clockDoubtful: false,
  ...more,
});

describe('a page of yesterday on a phone without signal', () => {
  const onMonday = today({
    sessionSent: true,
    exercises: [
      exercise('a', weightDose, { weekdays: [1, 3, 5] }),
      exercise('b', weightDose, { weekdays: [2], planned: false }),
      exercise('c', weightDose),
    ],
  });

  it('shows the exercises of the weekday it is', () => {
    const planned = viewOnDay(onMonday, '2026-03-10').exercises.map((one) => one.planned);
    expect(planned).toEqual([false, true, true]);
  });

  it('asks for this morning and lets a session begin, though one was sent yesterday', () => {
    const view = viewOnDay(onMonday, '2026-03-10');
    expect(view.sessionSent).toBe(false);
    expect(dayState(view, [], 0)).toMatchObject({ session: 'open', isMorningDue: true });
  });

  it('offers yesterday’s check as late only where it was not given', () => {
    const view = viewOnDay(onMonday, '2026-03-10');
    expect(dayState(view, [], 0).lateMorning).toBe(monday);
    expect(dayState(view, [saved({ kind: 'morning' })], 0).lateMorning).toBeNull();
    const answered = today({ morning: { ...onMonday.morning, answered: true } });
    expect(dayState(viewOnDay(answered, '2026-03-10'), [], 0).lateMorning).toBeNull();
  });

  it('keeps what rests at rest', () => {
    const resting = today({ exercises: [exercise('a', weightDose, { today: 'rest-this-joint' })] });
    expect(viewOnDay(resting, '2026-03-10').exercises[0]?.today).toBe('rest-this-joint');
  });

  it.each([
    ['2026-03-11', false],
    ['2026-03-12', false],
    ['2026-03-13', true],
  ])('of Monday with 3 days allowed, on %s is too old: %s', (day, isTooOld) => {
    expect(viewOnDay(onMonday, day).isTooOld).toBe(isTooOld);
  });

  it.each([
    ['2026-03-10', false],
    ['2026-03-11', true],
    ['2026-03-12', true],
  ])(
    'begins nothing from the day of a limit it does not know (11 March): on %s too old: %s',
    (day, isTooOld) => {
      expect(viewOnDay({ ...onMonday, changesOn: '2026-03-11' }, day).isTooOld).toBe(isTooOld);
      expect(viewOnDay({ ...onMonday, changesOn: null }, day).isTooOld).toBe(false);
    },
  );

  it('reads the civil day on the phone’s own clock', () => {
    expect(phoneDay(new Date(2026, 2, 9, 23, 59).getTime())).toBe('2026-03-09');
    expect(phoneDay(new Date(2026, 2, 10, 0, 0).getTime())).toBe('2026-03-10');
  });
});

describe('dark urine and unusual muscle pain', () => {
  it.each([
    ['2026-03-11', true],
    ['2026-03-12', false],
  ])('asked until 11 March, on %s: %s', (day, isAsked) => {
    const view = viewOnDay(today({ urineAskedUntil: '2026-03-11' }), day);
    expect(dayState(view, [], 0).asksUrine).toBe(isAsked);
  });

  it.each([
    ['2026-03-09', false],
    ['2026-03-10', true],
    ['2026-03-12', true],
    ['2026-03-13', false],
  ])(
    'is asked three mornings after a new dose that the clinic has not heard of: on %s %s',
    (day, isAsked) => {
      const fresh = today({ exercises: [exercise('a', weightDose, { isNewDose: true })] });
      expect(dayState(viewOnDay(fresh, day), [saved({})], 0).asksUrine).toBe(isAsked);
    },
  );

  it('is not asked after a session of a dose done before', () => {
    const view = viewOnDay(today(), '2026-03-10');
    expect(dayState(view, [saved({})], 0).asksUrine).toBe(false);
  });
});
