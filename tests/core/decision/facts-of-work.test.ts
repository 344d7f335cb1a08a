import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import {
  baseline,
  firstMonday,
  instantOn,
  judgedMorning,
  knee,
  lastSession,
  morning,
  noonOf,
  record,
  session,
  version,
  withMorning,
  withSession,
} from './small-record.ts';

const both = [version(), version({ id: 'arm-1', itemId: 'arm', joints: ['right-shoulder'] })];
const kneeFacts = (of: PatientRecord, at = noonOf(judgedMorning)) => factsFor(of, knee, at);
const daysBefore = (days: number) => addDays(judgedMorning, -days);

describe('work, adherence and breaks', () => {
  const lastWith = (repetitions: (number | null)[], stopReason: 'none' | 'joint-pain' = 'none') => {
    const one = session(lastSession, {}, {}, both);
    const sets = one.sets.map((set) =>
      set.itemId === 'knee' ? { ...set, repetitions: repetitions[set.set - 1] ?? null, stopReason } : set,
    );
    return kneeFacts(withSession(record(), { ...one, sets }));
  };

  it('repetitions count to the floor of the band and no further', () => {
    expect(lastWith([15, 15, 15]).repetitionsDonePercent).toBe(100);
    expect(lastWith([30, 15, 0]).repetitionsDonePercent).toBeCloseTo(66.667, 2);
    expect(lastWith([15, 15, 14]).sessionsOnTarget).toBe(0);
  });

  it('a count not given is unknown, unless the rest already falls short', () => {
    expect(lastWith([15, 15, null]).repetitionsDonePercent).toBeNull();
    expect(lastWith([15, 5, null]).repetitionsDonePercent).toBeCloseTo(77.778, 2);
  });

  it('sessions on target start again with a new version', () => {
    const second = version({
      id: 'knee-2',
      version: 2,
      signedAt: instantOn(lastSession, 10),
      origin: 'progress',
    });
    const changed = record({ prescriptions: [version({ endedAt: second.signedAt }), second] });
    expect(kneeFacts(withSession(changed, session(lastSession, {}, {}, [second]))).sessionsOnTarget).toBe(1);
  });

  it('an easier session done in full is complete and still not on target', () => {
    const one = session(lastSession, { kind: 'bad-day' }, {}, both);
    const facts = kneeFacts(withSession(record(), { ...one, sets: one.sets.filter((set) => set.set < 3) }));
    expect([facts.repetitionsDonePercent, facts.sessionsOnTarget]).toEqual([100, 0]);
  });

  it('reserve not said counts as none left, and only where two were prescribed does that hold', () => {
    const one = session(lastSession, {}, {}, both);
    const silent = { ...one, sets: one.sets.map((set) => ({ ...set, reserve: null })) };
    const facts = kneeFacts(withSession(record(), silent));
    expect([facts.reserveShortfall, decide(facts).decision]).toEqual([2, 'hold']);
  });

  it('more than a tenth over the load, an extra set or an extra session is overdone', () => {
    const loaded = (loadKg: number) => {
      const one = session(lastSession, {}, {}, both);
      return kneeFacts(withSession(record(), { ...one, sets: one.sets.map((set) => ({ ...set, loadKg })) }))
        .overdone;
    };
    expect([10, 11, 11.005, 11.5].map(loaded)).toEqual([false, false, true, true]);
    const one = session(lastSession, {}, {}, both);
    const first = one.sets.map((set, place) => (place === 0 ? { ...set, loadKg: 12 } : set));
    expect(kneeFacts(withSession(record(), { ...one, sets: first })).overdone).toBe(true);
    const extra = { ...one, sets: [...one.sets, { ...one.sets[0]!, set: 4 }] };
    expect(kneeFacts(withSession(record(), extra)).overdone).toBe(true);
    expect(
      kneeFacts(withSession(record(), session(lastSession, { didExtra: true }, {}, both))).overdone,
    ).toBe(true);
  });

  it('a session made up on another day is not missed', () => {
    const moved = record().sessions.map((one) =>
      one.day === '2026-02-16' ? session('2026-02-17', {}, {}, both) : one,
    );
    expect(kneeFacts(record({ sessions: moved })).missedSessions14).toBe(0);
    const dropped = record().sessions.filter((one) => one.day !== '2026-02-16');
    expect(kneeFacts(record({ sessions: dropped })).missedSessions14).toBe(1);
  });

  it('a break counts while it lasts and after the first session, until the dose was set anew', () => {
    const short = record({ sessions: [session(firstMonday, {}, {}, both)], planned: [] });
    expect(kneeFacts(short, noonOf(addDays(firstMonday, 13))).gapDays).toBe(13);
    expect(kneeFacts(short, noonOf(addDays(firstMonday, 14))).gapDays).toBe(14);
    const back = addDays(firstMonday, 16);
    const returned = { ...short, sessions: [...short.sessions, session(back, {}, {}, both)] };
    expect(kneeFacts(returned, noonOf(addDays(back, 1))).gapDays).toBe(16);
    const easier = version({ id: 'knee-2', version: 2, origin: 'ease-back', signedAt: instantOn(back, 9) });
    const eased = { ...short, prescriptions: [version({ endedAt: easier.signedAt }), easier] };
    const resumed = { ...eased, sessions: [...short.sessions, session(back, {}, {}, [easier])] };
    expect(kneeFacts(resumed, noonOf(addDays(back, 1))).gapDays).toBe(1);
  });

  it('pain relief not said counts as taken', () => {
    const silent = withSession(record(), session(lastSession, { extraPainRelief: null }, {}, both));
    expect(kneeFacts(silent).extraPainRelief).toBe(true);
    expect(
      kneeFacts(withMorning(record(), morning(judgedMorning, {}, { extraPainRelief: true }))).extraPainRelief,
    ).toBe(true);
  });

  it('an injection of another joint is not this joint’s treatment', () => {
    const event = (joint: Joint | null, kind: 'joint-injection' | 'illness' = 'joint-injection') =>
      kneeFacts(record({ events: [{ day: daysBefore(14), kind, joint }] })).treatmentChangeDays;
    expect([event(knee), event('right-knee'), event(null), event(knee, 'illness')]).toEqual([
      14,
      null,
      14,
      null,
    ]);
  });

  it('giving way with a fall is a red flag, without one it holds', () => {
    const gave = withSession(record(), session(lastSession, {}, { gaveWay: true }, both));
    expect(kneeFacts(gave)).toMatchObject({ gaveWay: true, redFlags: [] });
    const fell: PatientRecord = { ...gave, events: [{ day: lastSession, kind: 'fall', joint: null }] };
    expect(kneeFacts(fell).redFlags).toEqual(['fall-with-injury']);
  });
});

describe('baseline values', () => {
  it('the band is never wider than two points over usual pain, the ceiling never over 7', () => {
    const facts = kneeFacts(record({ baselines: [baseline({ usualPainTop: 9, acceptablePainLimit: 9 })] }));
    expect([facts.usualPainTop, facts.painCeiling]).toEqual([3, 7]);
  });

  it('values set later do not speak for an earlier day', () => {
    const later = record({ baselines: [baseline({ setOn: addDays(judgedMorning, 1) })] });
    expect(kneeFacts(later).usualPain).toBeNull();
  });

  it('the slow-rise signal stays until a new baseline is set', () => {
    const spread = { standardDeviation: 0.6, values: 14 };
    const of = (pain: number, baselineValues = baseline({ morningSpread: spread })) =>
      kneeFacts(
        record({
          baselines: [baselineValues],
          mornings: record().mornings.map((one) => morning(one.day, { pain })),
        }),
      ).symptomSignal;
    expect([of(1), of(3)]).toEqual([false, true]);
    expect(of(3, baseline({ morningSpread: { ...spread, values: 13 } }))).toBe(false);
    expect(of(3, baseline())).toBe(false);
    expect(of(3, baseline({ morningSpread: spread, setOn: daysBefore(2) }))).toBe(false);
  });
});

describe('questions asked after the work and left open', () => {
  const withAnswer = (changed: object, answers: object) =>
    kneeFacts(withSession(record(), session(lastSession, changed, answers, both)));

  it('count as yes, never as no: the joint may have given way, more may have been done', () => {
    expect(withAnswer({}, { gaveWay: null }).gaveWay).toBe(true);
    expect(withAnswer({ didExtra: null }, {}).overdone).toBe(true);
    expect(decide(withAnswer({ didExtra: null }, { gaveWay: null })).decision).toBe('hold');
  });

  it('mean nothing where no set was done: there was nothing to ask', () => {
    const idle = withAnswer({ sets: [], didExtra: null }, { gaveWay: null });
    expect(idle).toMatchObject({ gaveWay: false, overdone: false });
  });

  it('giving way left open, with a fall on record, is a fall with an injury', () => {
    const open = withSession(record(), session(lastSession, {}, { gaveWay: null }, both));
    const fell = { ...open, events: [{ day: lastSession, kind: 'fall' as const, joint: null }] };
    expect(kneeFacts(fell).redFlags).toEqual(['fall-with-injury']);
  });
});

describe('a session of which only some exercises were eased', () => {
  const eased = (kneeSets: readonly (boolean | undefined)[]) => {
    const one = session(lastSession, {}, {}, both);
    const sets = one.sets.flatMap((set) => {
      if (set.itemId !== 'knee') return [{ ...set, easier: false }];
      const easier = kneeSets[set.set - 1];
      return set.set > kneeSets.length ? [] : [easier === undefined ? set : { ...set, easier }];
    });
    return kneeFacts(withSession(record(), { ...one, sets }));
  };

  it('an exercise eased and done in full is not short', () => {
    expect(eased([true, true]).repetitionsDonePercent).toBe(100);
  });

  it('nor is it a session on target of the full dose', () => {
    expect(eased([true, true]).sessionsOnTarget).toBe(0);
  });

  it('one set of the full dose, or a set that does not say, measures it against the full dose', () => {
    expect(eased([true, false]).repetitionsDonePercent).toBeCloseTo(66.667, 2);
    expect(eased([true, undefined]).repetitionsDonePercent).toBeCloseTo(66.667, 2);
  });
});
