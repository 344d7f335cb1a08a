/** How far back each fact looks, and where its count begins: under, at and over each edge. */
import { describe, expect, it } from 'vitest';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { MorningRecord, PatientRecord } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
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
  trainingDays,
  version,
  withMorning,
  withSession,
} from '../small-record.ts';

const factsAt = (of: PatientRecord, day: Day = judgedMorning, settings = {}) =>
  factsFor(of, knee, noonOf(day), settings);
const back = (days: number): Day => addDays(judgedMorning, -days);
const flagged = (day: Day, changed: Partial<MorningRecord> = {}) =>
  morning(day, {}, { redFlags: ['dark-urine'], ...changed });

describe('warning signs', () => {
  it('count from the day of the judged session on, also where the session tells them', () => {
    const told = (days: number) => factsAt(withMorning(record(), flagged(back(days)))).redFlags;
    expect([0, 1, 2].map(told)).toEqual([['dark-urine'], ['dark-urine'], []]);
    const at = (day: Day) =>
      factsAt(withSession(record(), session(day, { redFlags: ['fainting'] }))).redFlags;
    expect([lastSession, trainingDays.at(-2)!].map(at)).toEqual([['fainting'], []]);
  });

  it('of 14 days count where no session is judged', () => {
    const told = (days: number) =>
      factsAt({ ...withMorning(record(), flagged(back(days))), sessions: [] }).redFlags;
    expect([13, 14, 15].map(told)).toEqual([['dark-urine'], ['dark-urine'], null]);
  });

  it('told later than now, or for a later day, are not known yet', () => {
    const at = (instant: number) =>
      factsFor(
        withMorning(record(), flagged(judgedMorning, { recordedAt: instantOn(judgedMorning, 10) })),
        knee,
        { instant, day: judgedMorning },
      ).redFlags;
    const ten = instantOn(judgedMorning, 10);
    expect([ten - 1, ten].map(at).map((flags) => flags?.length ?? null)).toEqual([0, 1]);
    expect(factsAt(withMorning(record(), flagged(back(-1), { recordedAt: 0 }))).redFlags).toEqual([]);
  });

  it('with a doubtful clock count where they came in since the session began', () => {
    const began = instantOn(lastSession, 17);
    const at = (recordedAt: number) => {
      const odd = flagged('2020-01-01', { clockDoubtful: true, recordedAt });
      return factsAt({ ...record(), mornings: [...record().mornings, odd] }).redFlags;
    };
    expect([began - 1, began, instantOn(judgedMorning, 12) + 1].map(at)).toEqual([[], ['dark-urine'], []]);
  });

  it('are open where the session or the morning left them open, and not where both said none', () => {
    const silent = withMorning(record(), morning(judgedMorning, {}, { redFlags: null }));
    expect(factsAt(silent).redFlags).toBeNull();
    expect(factsAt(withSession(record(), session(lastSession, { redFlags: null }))).redFlags).toBeNull();
    const unasked = record({ mornings: record().mornings.filter((one) => one.day !== judgedMorning) });
    expect(factsAt(unasked).redFlags).toEqual([]);
    expect(factsAt(record()).redFlags).toEqual([]);
  });
});

describe('planned and missed sessions', () => {
  it('are those of the 14 days before today, each day once', () => {
    const planned = (...days: readonly number[]) =>
      factsAt(record({ planned: days.map((one) => ({ day: back(one) })), sessions: [] }));
    expect([0, 1, 14, 15].map((days) => planned(days).plannedSessions14)).toEqual([0, 1, 1, 0]);
    expect(planned(3, 3, 5)).toMatchObject({ plannedSessions14: 2, missedSessions14: 2 });
    const more = factsAt(record({ planned: [{ day: back(1) }] }));
    expect(more).toMatchObject({ plannedSessions14: 1, missedSessions14: 0 });
  });
});

describe('days without a session', () => {
  const at = (signed: number, origin: 'clinician' | 'progress') => {
    const [first, second] = [addDays(lastSession, -20), lastSession];
    const anew = version({ id: 'knee-2', version: 2, signedAt: signed, origin });
    const of = record({
      prescriptions: [version(), anew],
      sessions: [session(first), session(second, {}, {}, [anew])],
    });
    return factsAt(of).gapDays;
  };

  it('are those before the session, unless the dose was set anew after the one before it began', () => {
    const began = instantOn(addDays(lastSession, -20), 17);
    expect([began - 1, began, began + 1].map((signed) => at(signed, 'clinician'))).toEqual([20, 20, 1]);
    expect(at(began + 1, 'progress')).toBe(20);
  });

  it('are those since it where no session came before, and 0 without any', () => {
    expect(factsAt(record({ sessions: [session(lastSession)] }), addDays(lastSession, 3)).gapDays).toBe(3);
    expect(factsAt(record({ sessions: [] })).gapDays).toBe(0);
    const longer = record({ sessions: [session(addDays(lastSession, -4)), session(lastSession)] });
    expect([3, 4, 5].map((days) => factsAt(longer, addDays(lastSession, days)).gapDays)).toEqual([4, 4, 5]);
  });
});

describe('a change of treatment', () => {
  it('counts from its own day, the last one, and not before it', () => {
    const days = (...back_: readonly number[]) =>
      factsAt(
        record({ events: back_.map((one) => ({ day: back(one), kind: 'medicine-change', joint: null })) }),
      ).treatmentChangeDays;
    expect([days(-1), days(0), days(1), days(5, 2, 9), days()]).toEqual([null, 0, 1, 2, null]);
  });
});

describe('the morning before', () => {
  it('speaks for a week', () => {
    const alone = (days: number) =>
      factsAt({ ...record(), mornings: [morning(back(days), { pain: 3 })] }).previousMorningOverTop;
    // The morning after the session is the one it is compared with.
    expect([0, 1, 7, 8].map(alone)).toEqual([false, true, true, false]);
  });

  it('in a row over the band is counted over 56 days', () => {
    const many = (count: number) =>
      factsAt({
        ...record(),
        mornings: Array.from({ length: count }, (_, place) => morning(back(place), { pain: 4 })),
      }).morningsOverTop;
    expect([55, 56, 57].map(many)).toEqual([55, 56, 56]);
  });
});

describe('a flare', () => {
  const flared = (answers: Readonly<Record<number, boolean | null>>) =>
    Object.entries(answers).reduce<PatientRecord>(
      (of, [days, flare]) => withMorning(of, morning(back(Number(days)), { flare })),
      { ...record(), mornings: record().mornings.filter((one) => one.day < back(9)) },
    );

  it('goes on over two days of silence, and begins anew after three', () => {
    expect(factsAt(flared({ 0: true, 2: true })).flareDays).toBe(3);
    expect(factsAt(flared({ 0: true, 3: true })).flareDays).toBe(4);
    expect(factsAt(flared({ 0: true, 4: true })).flareDays).toBe(1);
    expect(factsAt(flared({ 0: true, 1: null, 2: null, 3: true })).flareDays).toBe(4);
    expect(factsAt(flared({ 0: true, 1: false, 2: true })).flareDays).toBe(1);
  });

  it('is not read from a doubtful clock, nor before it is known', () => {
    const odd = (changed: Partial<MorningRecord>) =>
      factsAt(withMorning(record(), morning(judgedMorning, { flare: true }, changed))).flareDays;
    expect(odd({})).toBe(1);
    expect(odd({ clockDoubtful: true })).toBe(0);
    const noon = instantOn(judgedMorning, 12);
    expect([noon, noon + 1].map((recordedAt) => odd({ recordedAt }))).toEqual([1, 0]);
  });
});

describe('the acceptable pain limit', () => {
  it('lies from 5 to 7, whatever was entered, and is 5 where nothing was', () => {
    const limit = (acceptablePainLimit: number) =>
      factsAt(record({ baselines: [baseline({ acceptablePainLimit })] })).painCeiling;
    expect([3, 4, 5, 6, 7, 8].map(limit)).toEqual([5, 5, 5, 6, 7, 7]);
    expect(factsAt(record({ baselines: [] })).painCeiling).toBe(5);
  });
});

describe('a later morning', () => {
  it('is none of the day that was left out, though it was answered again there', () => {
    const of = withMorning(record(), morning(judgedMorning, { pain: null }));
    const again = {
      ...morning(judgedMorning, { pain: 6 }),
      id: 'again',
      recordedAt: instantOn(judgedMorning, 9),
    };
    const settings = { 'later-morning-days': 2 };
    expect(factsAt({ ...of, mornings: [...of.mornings, again] }, judgedMorning, settings)).toMatchObject({
      painNextMorning: null,
      painLaterMorning: null,
    });
  });
});

describe('the slow-rise signal', () => {
  // Half a deviation of allowance, four deviations of interval, at least one point of deviation.
  const risen = (pains: readonly number[], changed: object = {}, settings = {}) =>
    factsAt(
      {
        ...record({
          baselines: [
            baseline({
              usualPain: 1,
              usualPainTop: 1,
              setOn: back(pains.length),
              morningSpread: { standardDeviation: 1, values: 14 },
              ...changed,
            }),
          ],
        }),
        mornings: pains.map((pain, place) => morning(back(pains.length - 1 - place), { pain })),
      },
      judgedMorning,
      { 'signal-interval': 4, 'signal-inflation': 1, ...settings },
    ).symptomSignal;

  it('is there once the sum of mornings over usual and the allowance passes the interval, not at it', () => {
    // Usual 1 and allowance 0.5: a morning of 4 adds 2.5, of 3 adds 1.5.
    expect(risen([4, 3])).toBe(false);
    expect(risen([4, 4])).toBe(true);
    expect(risen([4, 3, 2])).toBe(true);
    expect(risen([4, 3, 1])).toBe(false);
  });

  it('a calm morning takes from the sum, which never falls under nothing', () => {
    expect(risen([0, 0, 4, 4])).toBe(true);
    expect(risen([4, 0, 4])).toBe(false);
    expect(risen([4, 1, 4])).toBe(true);
  });

  it('begins from nothing after seven calm mornings', () => {
    const calm = [1, 1, 1, 1, 1, 1, 1];
    expect(risen([4, ...calm, 4, 3])).toBe(false);
    expect(risen([4, ...calm, 4, 4])).toBe(true);
  });

  it('is wider where the mornings scatter more, and never narrower than one point', () => {
    const spread = (standardDeviation: number) => ({ morningSpread: { standardDeviation, values: 14 } });
    expect(risen([4, 4], spread(0.2))).toBe(true);
    expect(risen([4, 4], spread(1.25))).toBe(false);
    expect(risen([4, 3], spread(0.2))).toBe(false);
  });

  it('reads the mornings after the baseline was set, one a day', () => {
    expect(risen([4, 4], { setOn: back(1) })).toBe(false);
    expect(risen([4, 4, 4], { setOn: back(2) })).toBe(true);
    expect(risen([4, 4], { setOn: firstMonday })).toBe(true);
  });
});
