/** What was done of what was asked: how it is counted, set by set and session by session. */
import { describe, expect, it } from 'vitest';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
import { occlusion } from '../propose.ts';
import {
  instantOn,
  judgedMorning,
  knee,
  kneeDose,
  lastSession,
  noonOf,
  record,
  session,
  shoulderVersion,
  trainingDays,
  version,
  withSession,
} from '../small-record.ts';

const factsAt = (of: PatientRecord) => factsFor(of, knee, noonOf(judgedMorning));

describe('sessions on target', () => {
  const withSets = (changed: object) => {
    const one = session(lastSession);
    return factsAt(withSession(record(), { ...one, sets: one.sets.map((set) => ({ ...set, ...changed })) }));
  };

  it('are counted to four, and end with one not done in full, a doubtful clock or an easier one', () => {
    expect(factsAt(record()).sessionsOnTarget).toBe(4);
    const from = (count: number) =>
      factsAt(record({ sessions: record().sessions.slice(-count) })).sessionsOnTarget;
    expect([1, 2, 3, 4, 5].map(from)).toEqual([1, 2, 3, 4, 4]);
    const broken = (changed: object) =>
      factsAt(withSession(record(), session(trainingDays.at(-3)!, changed))).sessionsOnTarget;
    expect([
      broken({}),
      broken({ clockDoubtful: true, recordedAt: instantOn(trainingDays.at(-3)!, 18) }),
    ]).toEqual([4, 2]);
    expect(broken({ kind: 'bad-day' })).toBe(2);
    // One that does not touch the line is passed over, as is one that is not known yet.
    expect(broken({ sets: session(lastSession, {}, {}, [shoulderVersion]).sets })).toBe(4);
    expect(broken({ recordedAt: instantOn(judgedMorning, 13) })).toBe(4);
  });

  it('twice on one day is overdone, and a day apart is not', () => {
    const again = (day: Day) =>
      factsAt({ ...record(), sessions: [...record().sessions, { ...session(day), id: 'z' }] }).overdone;
    expect(again(lastSession)).toBe(true);
    expect(again(addDays(lastSession, -1))).toBe(false);
  });

  it('a load that was not said leaves the work unknown; of an exercise without load it does not', () => {
    expect(withSets({ loadKg: null }).repetitionsDonePercent).toBeNull();
    const free = version({ dose: { ...kneeDose, loadKg: 0 } });
    const one = session(lastSession, {}, {}, [free]);
    const of = {
      ...record({ prescriptions: [free] }),
      sessions: [{ ...one, sets: one.sets.map((set) => ({ ...set, loadKg: null })) }],
    };
    expect(factsAt(of).repetitionsDonePercent).toBe(100);
  });

  it('of cuff work are measured set by set against the scheme', () => {
    const by = version({ dose: occlusion });
    const done = (...repetitions: readonly number[]) => {
      const one = session(lastSession, {}, {}, [by]);
      const sets = repetitions.map((count, place) => ({
        ...one.sets[0]!,
        set: place + 1,
        repetitions: count,
      }));
      return factsAt(record({ prescriptions: [by], sessions: [{ ...one, sets }] })).repetitionsDonePercent;
    };
    // The scheme asks for 20, 15, 15 and 15: 65 in all.
    expect(done(20, 15, 15, 15)).toBe(100);
    expect(done(10, 15, 15, 15)).toBeCloseTo((100 * 55) / 65, 9);
    expect(done(20, 15, 15)).toBeCloseTo((100 * 50) / 65, 9);
    expect(done(20, 20, 15, 10)).toBeCloseTo((100 * 60) / 65, 9);
  });

  it('the most telling reason to stop is that of the session', () => {
    const one = session(lastSession);
    const stopped = (...reasons: readonly ('none' | 'tired' | 'joint-pain' | 'time' | 'symptom')[]) =>
      factsAt(
        withSession(record(), {
          ...one,
          sets: one.sets.map((set, place) => ({ ...set, stopReason: reasons[place] ?? 'none' })),
        }),
      ).stopReason;
    expect(stopped('none', 'tired', 'none')).toBe('tired');
    expect(stopped('tired', 'joint-pain', 'symptom')).toBe('joint-pain');
    expect(stopped('symptom', 'tired', 'time')).toBe('symptom');
    expect(stopped()).toBe('none');
  });

  it('repetitions in reserve count by the worst set, and only where some were prescribed', () => {
    expect(withSets({ reserve: 1 })).toMatchObject({ reserveShortfall: 1, prescribedReserve: 2 });
    expect(withSets({ reserve: 3 })).toMatchObject({ reserveShortfall: 0, prescribedReserve: 2 });
    const asked = (reserve: number) => {
      const by = version({ dose: { ...kneeDose, reserve } });
      const one = session(lastSession, {}, {}, [by]);
      const sets = one.sets.map((set) => ({ ...set, reserve: 0 }));
      return factsAt(record({ prescriptions: [by], sessions: [{ ...one, sets }] }));
    };
    expect(asked(0)).toMatchObject({ reserveShortfall: 0, prescribedReserve: 0 });
    expect(asked(1)).toMatchObject({ reserveShortfall: 1, prescribedReserve: 1 });
  });

  it('the least done of the lines that load the joint speaks for it', () => {
    const second = version({ id: 'knee-b', itemId: 'knee-b' });
    const one = session(lastSession, {}, {}, [version(), second]);
    const done = (first: number | null, other: number | null) => {
      const sets = one.sets.map((set) => ({ ...set, repetitions: set.itemId === 'knee' ? first : other }));
      return factsAt(record({ prescriptions: [version(), second], sessions: [{ ...one, sets }] }))
        .repetitionsDonePercent;
    };
    expect([done(15, 15), done(12, 15), done(15, 12), done(9, 12)]).toEqual([100, 80, 80, 60]);
    expect([done(null, 15), done(null, 12), done(12, null)]).toEqual([null, 80, 80]);
  });
});
