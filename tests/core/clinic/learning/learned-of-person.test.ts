/** What one person adds to the clinic’s figures, from a hand-made record whose answers are known. */
import { describe, expect, it } from 'vitest';
import { learnedOf, type PersonOnRecord, type Verdict } from '#core/clinic/learning/learned-of-person.ts';
import type { PatientRecord, PrescriptionVersion } from '#core/record/record.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';

const dayMs = 86_400_000;
const instant = (day: string, hour = 12): number => dayNumber(day) * dayMs + hour * 3_600_000;
const since = '2026-01-05';
/** Ten whole weeks later. */
const today = addDays(since, 70);
const period = {
  ...{ since, today, from: instant(since, 0) },
  dayOf: (at: number) => new Date(at).toISOString().slice(0, 10),
};

const version = (over: Partial<PrescriptionVersion>): PrescriptionVersion => ({
  ...{ id: 'v', itemId: 'line', version: 1, dose: lowLoadDose, badDay: lowLoadDose, joints: ['right-knee'] },
  ...{ signedAt: instant(since), endedAt: null, origin: 'clinician' },
  ...over,
});

const record = (over: Partial<PatientRecord>): PatientRecord => ({
  ...{ patientId: 'p', followedJoints: ['right-knee'], inflammatoryArthritis: false, ownedLoadsKg: [] },
  ...{ prescriptions: [version({})], sessions: [], mornings: [], effusions: [], baselines: [] },
  ...{ planned: [], events: [], limits: [] },
  ...over,
});

const person = (over: Partial<PersonOnRecord>): PersonOnRecord => ({
  record: record({}),
  danger: { signs: [], contacts: [] },
  off: new Set(),
  signedAt: [],
  outcomeSince: () => [],
  ...over,
});
const learned = (over: Partial<PersonOnRecord>) => learnedOf(person(over), period);

const morning = (day: string, pain: number | null, clockDoubtful = false) =>
  ({ id: day, day, clockDoubtful, joints: [{ joint: 'right-knee', pain }] }) as never;
const session = (day: string) => ({ id: day, day }) as never;

describe('mornings', () => {
  it('are asked from the day after the first signed dose to yesterday, but for days off', () => {
    expect(learned({}).mornings).toEqual({ asked: 69, answered: 0 });
    const off = new Set([addDays(since, 10), addDays(since, 11)]);
    expect(learned({ off }).mornings.asked).toBe(67);
    expect(learned({ record: record({ followedJoints: [] }) }).mornings.asked).toBe(0);
    expect(learned({ record: record({ prescriptions: [] }) }).mornings.asked).toBe(0);
  });

  it('are answered where a pain was given at a time that is not in doubt, and on a day that was asked about', () => {
    const mornings = [
      morning(addDays(since, 1), 0),
      morning(addDays(since, 2), null),
      morning(addDays(since, 3), 4, true),
      morning(addDays(since, 4), 4),
      morning(addDays(since, 4), 5),
      morning(since, 3),
      morning(today, 3),
    ];
    expect(learned({ record: record({ mornings }) }).mornings.answered).toBe(2);
  });
});

it('sessions are counted week by week, so that one more than planned makes up for no other week', () => {
  const planned = [0, 2, 4, 7, 9, 14].map((day) => ({ day: addDays(since, day) }));
  // Two of three; three for two; none for one.
  const sessions = [0, 6, 7, 8, 9].map((day) => session(addDays(since, day)));
  expect(learned({ record: record({ planned, sessions }) }).sessions).toEqual({ planned: 6, done: 4 });
  expect(learned({ record: record({ sessions }) }).sessions).toBeNull();
});

it('a sign waits until a contact reached somebody, and stays open where none did', () => {
  const sign = (id: string, day: string) =>
    ({ id, urgency: 'same-day', reportedAt: instant(day), flags: [] }) as never;
  const contact = (id: string, hours: number, reached: string, on = since) =>
    ({ signIds: [id], reached, at: instant(on) + hours * 3_600_000 }) as never;
  const day = addDays(since, 3);
  const danger = {
    signs: [sign('old', addDays(since, -1)), sign('a', day), sign('b', day)],
    contacts: [
      contact('a', 1, 'nobody', day),
      contact('a', 5, 'carer', day),
      contact('a', 2.5, 'patient', day),
      contact('b', 1, 'nobody', day),
    ],
  };
  const found = learned({ danger });
  expect(found.signs.map(({ hours }) => hours)).toEqual([2.5, null]);
  expect(found.contacts).toBe(4);
});

it('weeks under a dose leave out days before, after its end and off; signatures before the period do not count', () => {
  const prescriptions = [
    version({ id: 'a', signedAt: instant(addDays(since, 7)), endedAt: instant(addDays(since, 21)) }),
    version({ id: 'b', itemId: 'other', signedAt: instant(addDays(since, 63)) }),
  ];
  const off = new Set([addDays(since, 8)]);
  const signedAt = [instant(addDays(since, -1)), instant(addDays(since, 7))];
  const found = learned({ record: record({ prescriptions }), off, signedAt });
  expect(found.weeks * 7).toBeCloseTo(14 + 7 - 1, 9);
  expect(found.signatures).toBe(1);
});

describe('a method', () => {
  const heavier = { ...lowLoadDose, loadKg: 5 };
  const of = (days: number, outcome: readonly Verdict[] = []) =>
    learned({
      record: record({
        prescriptions: [
          version({ id: 'a', signedAt: instant(addDays(today, -days)) }),
          version({ id: 'b', version: 2, dose: heavier, signedAt: instant(addDays(today, -1)) }),
        ],
      }),
      outcomeSince: () => outcome,
    }).methods;

  it.each([
    [27, 0],
    [28, 1],
    [29, 1],
  ])('whose first dose is %i days old gives %i shares of the first', (days, shares) => {
    expect(of(days)[0]!.shares).toEqual(Array.from({ length: shares }, () => 1.25));
  });

  it.each([
    [[], 'not-judged'],
    [['not-judged'], 'not-judged'],
    [['not-judged', 'within-error'], 'within-error'],
    [['within-error', 'better'], 'better'],
    [['better', 'worse', 'within-error'], 'worse'],
  ] as const)('measured %j is %s', (verdicts, outcome) => {
    expect(of(40, verdicts)[0]!.outcome).toBe(outcome);
  });

  it('whose last dose ended before the period is none of it', () => {
    const ended = { signedAt: instant(addDays(since, -60)), endedAt: instant(addDays(since, -1)) };
    expect(learned({ record: record({ prescriptions: [version(ended)] }) }).methods).toEqual([]);
  });

  it('is measured from four weeks before its first dose on', () => {
    const asked: string[] = [];
    learned({
      outcomeSince: (day) => {
        asked.push(day);
        return [];
      },
    });
    expect(asked).toEqual([addDays(since, -28)]);
  });
});
