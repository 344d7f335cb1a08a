/** Properties over generated histories; prescriptions, work done and baseline values held fixed. */
import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import { judgedSession } from '#core/decision/facts/judged-session.ts';
import { indexRecord } from '#core/decision/facts/record-index.ts';
import { evaluate } from '#core/decision/scope.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type {
  JointMorningAnswers,
  JointSessionAnswers,
  MorningRecord,
  PatientRecord,
  SessionRecord,
} from '#core/record/record.ts';
import { dayFromNumber } from '#core/time/day.ts';
import { endOf, randomHistory } from '#simulation/raises/random-history.ts';
import { firstDay } from '#simulation/raises/random-prescriptions.ts';
import { type Seeded, seeded } from '#simulation/raises/seeded.ts';

const days = 30;
const momentOn = (day: number) => ({ instant: endOf(day), day: dayFromNumber(day) });

const shuffled = <T>(list: readonly T[], random: Seeded): readonly T[] => {
  const copy = [...list];
  for (let place = copy.length - 1; place > 0; place--) {
    const other = random.below(place + 1);
    [copy[place], copy[other]] = [copy[other]!, copy[place]!];
  }
  return copy;
};

const permuted = (record: PatientRecord, random: Seeded): PatientRecord => ({
  ...record,
  prescriptions: shuffled(record.prescriptions, random),
  sessions: shuffled(record.sessions, random),
  mornings: shuffled(record.mornings, random),
  effusions: shuffled(record.effusions, random),
  baselines: shuffled(record.baselines, random),
  planned: shuffled(record.planned, random),
});

const withSession = (record: PatientRecord, session: SessionRecord): PatientRecord => ({
  ...record,
  sessions: record.sessions.map((one) => (one.id === session.id ? session : one)),
});

const withMorning = (record: PatientRecord, morning: MorningRecord): PatientRecord => ({
  ...record,
  mornings: record.mornings.map((one) => (one.id === morning.id ? morning : one)),
});

interface Deletion {
  readonly name: string;
  readonly record: PatientRecord;
  /** Rules that read the answer; every other rule must still fire as before. */
  readonly readers: readonly string[];
}

const peakReaders = ['P1', 'P1x', 'P2'];

const sessionDeletions = (
  record: PatientRecord,
  session: SessionRecord,
  joint: Joint,
): readonly Deletion[] => {
  const without = (change: Partial<JointSessionAnswers>): PatientRecord =>
    withSession(record, {
      ...session,
      joints: session.joints.map((one) => (one.joint === joint ? { ...one, ...change } : one)),
    });
  const answers = session.joints.find((one) => one.joint === joint);
  const [set] = session.sets;
  return [
    { name: 'before', record: without({ painBefore: null }), readers: [...peakReaders, 'P3', 'P3b'] },
    { name: 'during', record: without({ painDuring: null }), readers: [...peakReaders, 'P4'] },
    { name: 'after', record: without({ painAfter: null }), readers: [...peakReaders, 'P4'] },
    ...(typeof answers?.painTwoHours === 'number'
      ? [
          {
            name: 'two hours',
            record: without({ painTwoHours: null }),
            readers: [...peakReaders, 'P6', 'P6h'],
          },
        ]
      : []),
    {
      name: 'session red flags',
      record: withSession(record, { ...session, redFlags: null }),
      readers: ['R1'],
    },
    {
      name: 'pain relief',
      record: withSession(record, { ...session, extraPainRelief: null }),
      readers: ['D1'],
    },
    ...(set
      ? [
          {
            name: 'repetitions',
            record: withSession(record, {
              ...session,
              sets: session.sets.map((one) => ({ ...one, repetitions: null })),
            }),
            // Unknown repetitions cannot be too many either; the session then counts as not done.
            readers: ['C1', 'C2', 'C4', 'D3'],
          },
        ]
      : []),
  ];
};

const morningDeletions = (
  record: PatientRecord,
  morning: MorningRecord,
  joint: Joint,
): readonly Deletion[] => {
  const asked = morning.joints.find((one) => one.joint === joint);
  const without = (change: Partial<JointMorningAnswers>): PatientRecord =>
    withMorning(record, {
      ...morning,
      joints: morning.joints.map((one) => (one.joint === joint ? { ...one, ...change } : one)),
    });
  const readers = [...peakReaders, 'P5', 'P5h', 'P5r', 'P7', 'P7h', 'X1'];
  return [
    { name: 'next morning', record: without({ pain: null }), readers },
    { name: 'flare', record: without({ flare: null }), readers: ['F1', 'F1i', 'F2', 'W1'] },
    ...(asked?.swelling !== 'not-applicable'
      ? [{ name: 'swelling', record: without({ swelling: null }), readers: ['W3', 'W2', 'W1s'] }]
      : []),
    ...(asked?.stiffnessMinutes !== 'not-applicable'
      ? [{ name: 'stiffness', record: without({ stiffnessMinutes: null }), readers: ['T1', 'T2'] }]
      : []),
    {
      name: 'morning red flags',
      record: withMorning(record, { ...morning, redFlags: null }),
      readers: ['R1'],
    },
  ];
};

describe('generated histories', () => {
  it('the order in which anything was entered changes nothing', () => {
    const random = seeded(11);
    for (let count = 0; count < 150; count++) {
      const record = randomHistory(random, days);
      const other = permuted(record, random);
      for (const day of [5, 17, 29].map((after) => firstDay + after)) {
        expect(evaluate(other, momentOn(day))).toEqual(evaluate(record, momentOn(day)));
      }
    }
  });

  it('the same history at the same moment gives the same answers, whatever was asked of it before', () => {
    const record = randomHistory(seeded(12), days);
    const first = evaluate({ ...record }, momentOn(firstDay + 20));
    for (let day = 0; day < days; day++) evaluate(record, momentOn(firstDay + day));
    expect(evaluate(record, momentOn(firstDay + 20))).toEqual(first);
  });

  it('deleting an answer of the judged session or its morning never yields progress, and rules that do not read it stay', () => {
    const random = seeded(13);
    const tried = new Map<string, number>();
    for (let count = 0; count < 400; count++) {
      const record = randomHistory(random, days);
      const joint = random.pick(record.followedJoints);
      const at = momentOn(firstDay + 3 + random.below(days - 3));
      const judged = judgedSession(indexRecord(record), joint, at, engineDefaults);
      if (!judged.session || !judged.nextMorning || at.day !== judged.nextMorning.morning.day) continue;
      const before = decide(factsFor(record, joint, at)).reasons.map((one) => one.rule);
      const deletions = [
        ...sessionDeletions(record, judged.session.session, joint),
        ...morningDeletions(record, judged.nextMorning.morning, joint),
      ];
      for (const { name, record: changed, readers } of deletions) {
        const after = decide(factsFor(changed, joint, at));
        const fired = after.reasons.map((one) => one.rule);
        const lost = before.filter((rule) => !fired.includes(rule) && !readers.includes(rule));
        expect({ name, lost, progress: after.decision === 'progress' }).toEqual({
          name,
          lost: [],
          progress: false,
        });
        tried.set(name, (tried.get(name) ?? 0) + 1);
      }
    }
    console.log(`answers deleted: ${JSON.stringify([...tried])}`);
    expect(tried.size).toBe(12);
    for (const count of tried.values()) expect(count).toBeGreaterThan(20);
  });
});
