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

  it('one entered at this instant counts, one entered later is passed over', () => {
    const noon = instantOn(judgedMorning, 12);
    const entered = (recordedAt: number) => {
      const [first, second, third] = record().sessions.slice(-3);
      return factsAt(record({ sessions: [first!, { ...second!, recordedAt }, third!] })).sessionsOnTarget;
    };
    expect([noon - 1, noon, noon + 1].map(entered)).toEqual([3, 3, 2]);
  });

  it('are the fewest among the lines that load the joint', () => {
    const second = version({ id: 'knee-b', itemId: 'knee-b' });
    const sessions = trainingDays.map((day, place) =>
      session(day, {}, {}, place < 7 ? [version()] : [version(), second]),
    );
    expect(factsAt(record({ prescriptions: [version(), second], sessions })).sessionsOnTarget).toBe(2);
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

describe('a line among others that load the joint', () => {
  const second = version({ id: 'knee-b', itemId: 'knee-b' });
  const lines = [version(), second];
  const factsOf = (...sessions: readonly ReturnType<typeof session>[]) =>
    factsAt(record({ prescriptions: lines, sessions }));

  it('done a second time on one day is overdone, whatever else was done with it', () => {
    const [one, both] = [[version()], lines].map((by) => session(lastSession, {}, {}, by));
    expect(factsOf({ ...one!, id: 'a' }, { ...both!, id: 'b' }).overdone).toBe(true);
    expect(factsOf({ ...both!, id: 'a' }, { ...one!, id: 'b' }).overdone).toBe(true);
    const other = session(lastSession, {}, {}, [second]);
    expect(factsOf({ ...one!, id: 'a' }, { ...other, id: 'b' }).overdone).toBe(false);
  });

  it('stopped early stops the session, whichever line it is', () => {
    const both = session(lastSession, {}, {}, lines);
    const stopped = (itemId: string) =>
      both.sets.map((set) => (set.itemId === itemId ? { ...set, stopReason: 'joint-pain' as const } : set));
    expect(
      ['knee', 'knee-b', 'none'].map((id) => factsOf({ ...both, sets: stopped(id) }).stopReason),
    ).toEqual(['joint-pain', 'joint-pain', 'none']);
  });

  it('done with too much makes the session overdone, whichever line it is', () => {
    const both = session(lastSession, {}, {}, lines);
    const loaded = (itemId: string) =>
      both.sets.map((set) => (set.itemId === itemId ? { ...set, loadKg: 12 } : set));
    expect(['knee', 'knee-b', 'none'].map((id) => factsOf({ ...both, sets: loaded(id) }).overdone)).toEqual([
      true,
      true,
      false,
    ]);
  });
});

describe('where nothing was done of what loads the joint', () => {
  const nothing = {
    repetitionsDonePercent: null,
    stopReason: 'none',
    reserveShortfall: 0,
    prescribedReserve: 0,
    sessionsOnTarget: 0,
    overdone: false,
  };

  it('nothing is said of the work', () => {
    expect(factsAt(record({ sessions: [] }))).toMatchObject(nothing);
    expect(factsAt(withSession(record(), session(lastSession, { sets: [] })))).toMatchObject(nothing);
  });

  it('more done than planned, left open, counts as done from one set of an unknown dose on', () => {
    const [set] = session(lastSession).sets;
    const of = (...sets: readonly object[]) =>
      factsAt(withSession(record(), session(lastSession, { sets: sets as never, didExtra: null })));
    expect(of({ ...set, prescriptionId: 'gone' })).toMatchObject({ ...nothing, overdone: true });
    expect(of()).toMatchObject(nothing);
  });
});

describe('the share of the work that was done', () => {
  it('is under 100 with one repetition of many left out', () => {
    const by = version({ dose: { ...kneeDose, repetitions: { low: 40, high: 40 } } });
    const one = session(lastSession, {}, {}, [by]);
    const done = (last: number) => {
      const sets = one.sets.map((set) => ({ ...set, repetitions: set.set === 3 ? last : 40 }));
      return factsAt(record({ prescriptions: [by], sessions: [{ ...one, sets }] })).repetitionsDonePercent;
    };
    expect(done(40)).toBe(100);
    // 119 of 3 × 40.
    expect(done(39)).toBeCloseTo(99.17, 2);
  });

  it('of a line that is open is not known because another was done in full', () => {
    const second = version({ id: 'knee-b', itemId: 'knee-b' });
    const one = session(lastSession, {}, {}, [version(), second]);
    const sets = one.sets.map((set) => ({ ...set, repetitions: set.itemId === 'knee' ? null : 15 }));
    const of = record({ prescriptions: [version(), second], sessions: [{ ...one, sets }] });
    expect(factsAt(of).repetitionsDonePercent).toBeNull();
  });

  it('with a load heavier than planned a cuff line is overdone, its repetitions ask for no reserve', () => {
    const by = version({ dose: occlusion });
    const of = (loadKg: number) => {
      const one = session(lastSession, {}, {}, [by]);
      const sets = one.sets.map((set) => ({ ...set, loadKg, reserve: 0, repetitions: 40 }));
      return factsAt(record({ prescriptions: [by], sessions: [{ ...one, sets }] }));
    };
    expect(of(11)).toMatchObject({ overdone: false, reserveShortfall: 0, prescribedReserve: 0 });
    expect(of(12).overdone).toBe(true);
  });
});
