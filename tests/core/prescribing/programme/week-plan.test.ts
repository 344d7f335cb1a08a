/** The clinician's week: weekly sets, what does not go together, and how long a day takes. */
import { describe, expect, it } from 'vitest';
import type { Dose, LowLoadDose, OcclusionDose } from '#core/prescribing/dose.ts';
import type { ProgrammeItem, Weekday } from '#core/prescribing/programme/planned-sessions.ts';
import {
  exerciseSeconds,
  programmeDefaults,
  sessionMinutes,
} from '#core/prescribing/programme/session-length.ts';
import { laidOut, weekTemplates } from '#core/prescribing/programme/templates.ts';
import { unplannedDays } from '#core/prescribing/programme/unplanned-days.ts';
import { type PlannedExercise, refusedIn, weekPlan } from '#core/prescribing/programme/week-plan.ts';

const low: LowLoadDose = {
  method: 'low-load',
  exerciseId: 'knee-extension-seated',
  side: 'right',
  sets: 3,
  repetitions: { low: 15, high: 25 },
  reserve: 2,
  restSeconds: 90,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  loadKg: 4,
  oneRepMaxKg: 12,
};
const cuff: OcclusionDose = {
  method: 'occlusion',
  exerciseId: 'knee-extension-seated',
  side: 'right',
  limb: 'leg',
  sets: 4,
  scheme: [30, 15, 15, 15],
  restSeconds: 30,
  secondsPerRepetition: 4,
  sessionsPerWeek: 2,
  loadKg: 3,
  oneRepMaxKg: 12,
  cuff: { kind: 'elastic-wrap', tightness: 7 },
  inflation: 'continuous',
  capSeconds: 480,
  supervised: false,
};

const exercise = (itemId: string, dose: Dose, more: Partial<PlannedExercise> = {}): PlannedExercise => ({
  itemId,
  title: itemId,
  dose,
  target: ['quadriceps'],
  indirect: [],
  limb: 'leg',
  ...more,
});
const on = (itemId: string, ...weekdays: Weekday[]): ProgrammeItem => ({
  itemId,
  weekdays,
});
const kinds = (exercises: readonly PlannedExercise[], items: readonly ProgrammeItem[]) =>
  weekPlan(exercises, items).conflicts.map((one) => one.kind);

describe('weekly sets', () => {
  it('count direct sets whole and indirect sets at half', () => {
    const squat = exercise('squat', { ...low, sets: 4 }, { target: ['glutes'], indirect: ['quadriceps'] });
    const plan = weekPlan([exercise('knee', low), squat], [on('knee', 1, 3, 5), on('squat', 1, 4)]);
    const quadriceps = plan.muscles.find((one) => one.muscle === 'quadriceps');
    // 3 sets on 3 days, and half of 4 sets on 2 days.
    expect(quadriceps).toMatchObject({ directSets: 9, indirectSets: 8, weeklySets: 13 });
    expect(plan.muscles.find((one) => one.muscle === 'glutes')).toMatchObject({ weeklySets: 8 });
  });

  it('leave out an exercise that stands on no day', () => {
    expect(weekPlan([exercise('knee', low)], []).muscles).toEqual([]);
  });
});

describe('what does not go together', () => {
  it.each([
    [[1, 4], ['days-differ']],
    [[1, 3, 5], []],
    [
      [1, 3, 5, 7],
      ['days-differ', 'muscle-crowded'],
    ],
  ] as const)('prescribed three times a week, on days %j: %j', (days, expected) => {
    expect(kinds([exercise('knee', low)], [on('knee', ...days)])).toEqual(expected);
  });

  it.each([
    [1, 2, true],
    [1, 3, false],
    [7, 1, true],
    [6, 1, false],
  ] as const)('the same muscle on days %i and %i is named as crowded: %s', (first, second, isNamed) => {
    const twice = { ...low, sessionsPerWeek: 2 };
    const found = kinds([exercise('knee', twice)], [on('knee', first, second)]);
    expect(found.includes('muscle-crowded')).toBe(isNamed);
  });

  it.each([
    [[1], ['cuff-seldom', 'days-differ'], 0],
    [[1, 4], [], 0],
    [[1, 3, 5], ['days-differ'], 0],
    [[1, 3, 5, 7], ['cuff-often', 'days-differ', 'muscle-crowded'], 1],
  ] as const)(
    'a cuff on one limb on days %j: %j, of which %i keep it from being saved',
    (days, expected, refused) => {
      const plan = weekPlan([exercise('cuff', cuff)], [on('cuff', ...days)]);
      expect(plan.conflicts.map((one) => one.kind)).toEqual(expected);
      expect(refusedIn(plan)).toHaveLength(refused);
    },
  );

  it('two exercises with a cuff on one limb in a session cannot be saved; on two limbs they can', () => {
    const both = (second: OcclusionDose) =>
      weekPlan([exercise('a', cuff), exercise('b', second)], [on('a', 1, 4), on('b', 1, 4)]);
    expect(refusedIn(both(cuff)).map((one) => one.kind)).toEqual(['cuff-twice', 'cuff-twice']);
    expect(refusedIn(both({ ...cuff, side: 'left' }))).toEqual([]);
  });
});

describe('the length of a session', () => {
  it('is sets by their tempo, rests between, two minutes seated after a cuff, and the change', () => {
    // 3 × 20 repetitions of 4 s, 2 rests of 90 s, 60 s for the change.
    expect(exerciseSeconds(low)).toBe(240 + 180 + 60);
    // 75 repetitions of 4 s, 3 rests of 30 s, 120 s seated, 60 s for the change.
    expect(exerciseSeconds(cuff)).toBe(300 + 90 + 120 + 60);
    expect(sessionMinutes([low, cuff])).toBe(18);
    expect(sessionMinutes([])).toBe(0);
  });

  it.each([
    [8, false],
    [7, true],
  ])('of 8 minutes is named as long where the clinic allows %i: %s', (allowed, isNamed) => {
    const values = { ...programmeDefaults, 'longest-session-minutes': allowed };
    const plan = weekPlan([exercise('knee', low)], [on('knee', 1, 3, 5)], values);
    expect(plan.conflicts.some((one) => one.kind === 'session-long')).toBe(isNamed);
  });
});

describe('templates', () => {
  const many = [
    exercise('knee', low),
    exercise('arm', low, { target: ['biceps'], limb: 'arm' }),
    exercise('cuff-1', cuff),
    exercise('cuff-2', cuff),
    exercise('cuff-left', { ...cuff, side: 'left' }),
  ];

  it.each(weekTemplates.map((template) => [template.title, template] as const))(
    '“%s” can be saved as it is, and plans no exercise more often than prescribed',
    (_, template) => {
      const items = laidOut(template, many);
      expect(refusedIn(weekPlan(many, items))).toEqual([]);
      for (const item of items) {
        const prescribed = many.find((one) => one.itemId === item.itemId)!.dose.sessionsPerWeek;
        expect(item.weekdays.length).toBeLessThanOrEqual(prescribed);
      }
    },
  );
});

describe('work with a cuff alone, while no week is planned', () => {
  const days = (...exercises: readonly PlannedExercise[]) => [...unplannedDays(exercises, 1)];

  it.each([
    [1, [1]],
    [2, [1, 3]],
    [3, [1, 3, 5]],
    [5, [1, 3, 5]],
  ] as const)('prescribed %i times a week stands on the days %j', (sessionsPerWeek, expected) => {
    expect(days(exercise('cuff', { ...cuff, sessionsPerWeek }))).toEqual([['cuff', expected]]);
  });

  it('is never two exercises on one limb on a day, nor a limb on a fourth day', () => {
    const plan = days(exercise('a', cuff), exercise('b', cuff), exercise('arm', { ...cuff, limb: 'arm' }));
    expect(plan).toEqual([
      ['a', [1, 3]],
      ['b', [5]],
      ['arm', [1, 3]],
    ]);
  });

  it('leaves out what is done only with a clinician beside the patient', () => {
    expect(days(exercise('cuff', { ...cuff, supervised: true }))).toEqual([]);
  });
});

describe('other work while no week is planned', () => {
  const daysFrom = (first: Weekday, sessionsPerWeek: number) =>
    unplannedDays([exercise('knee', { ...low, sessionsPerWeek })], first).get('knee') ?? 'every day';

  it.each([
    [1, [1]],
    [2, [1, 4]],
    [3, [1, 3, 5]],
    [4, [1, 2, 4, 6]],
    [5, [1, 2, 3, 5, 6]],
    [6, [1, 2, 3, 4, 5, 6]],
    [7, 'every day'],
  ] as const)(
    'prescribed %i times a week stands on %j, counted from a Monday',
    (sessionsPerWeek, expected) => {
      expect(daysFrom(1, sessionsPerWeek)).toEqual(expected);
    },
  );

  it('is counted from the first day, over the end of the week', () => {
    expect(daysFrom(6, 2)).toEqual([2, 6]);
    expect(daysFrom(7, 3)).toEqual([2, 4, 7]);
  });

  it.each([2, 3] as const)(
    '%i times a week never falls on two days in a row, whatever the first day',
    (times) => {
      for (const first of [1, 2, 3, 4, 5, 6, 7] as const) {
        const days = daysFrom(first, times) as readonly number[];
        for (const day of days) expect(days).not.toContain((day % 7) + 1);
      }
    },
  );

  it('comes together with what else is done as often', () => {
    const plan = unplannedDays([exercise('knee', low), exercise('arm', low)], 2);
    expect(plan.get('knee')).toEqual(plan.get('arm'));
  });
});
