/** Facts that version 2 of the rules reads otherwise or for the first time: under, at and over each boundary. */
import { describe, expect, it } from 'vitest';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { Baseline, MorningRecord, PatientRecord } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
import {
  baseline,
  firstMonday,
  judgedMorning,
  knee,
  kneeDose,
  lastSession,
  morning,
  noonOf,
  record,
  session,
  version,
  withMorning,
  withSession,
} from '../small-record.ts';

const factsAt = (of: PatientRecord, day: Day = judgedMorning, settings = {}) =>
  factsFor(of, knee, noonOf(day), settings);
const earlier = (days: number): Day => addDays(lastSession, -days);
const withMornings = (pains: Readonly<Record<Day, number | null>>): PatientRecord =>
  Object.entries(pains).reduce(
    (of, [day, pain]) => withMorning(of, morning(day, { pain })),
    record({ mornings: record().mornings }),
  );

describe('two over before the session', () => {
  const told = (pains: Readonly<Record<Day, number | null>>) => factsAt(withMornings(pains)).twoOverBefore;

  it('is a morning 2 over the band, not 1', () => {
    expect([2, 3, 4].map((pain) => told({ [earlier(0)]: pain }))).toEqual([false, true, true]);
    const wider = record({
      baselines: [baseline({ usualPainTop: 2 })],
      mornings: withMornings({ [earlier(0)]: 3 }).mornings,
    });
    expect(factsAt(wider).twoOverBefore).toBe(false);
  });

  it('is one of the two answered mornings up to the day of the session, and not the third', () => {
    expect([0, 1, 2].map((days) => told({ [earlier(days)]: 3 }))).toEqual([true, true, false]);
    // The morning after the session is the one it is compared with.
    expect(told({ [judgedMorning]: 3 })).toBe(false);
    expect(told({ [earlier(0)]: null, [earlier(1)]: null, [earlier(2)]: 3 })).toBe(true);
  });

  it('lies at most a week back', () => {
    const alone = (days: number): PatientRecord => ({
      ...record(),
      mornings: [morning(earlier(days), { pain: 3 }), morning(judgedMorning)],
    });
    expect([6, 7].map((days) => factsAt(alone(days)).twoOverBefore)).toEqual([true, false]);
  });
});

describe('mornings over the band in a row', () => {
  const row = (pains: readonly (number | null)[]): number =>
    factsAt({
      ...record(),
      mornings: pains.map((pain, place) =>
        morning(addDays(judgedMorning, place + 1 - pains.length), { pain }),
      ),
    }).morningsOverTop;

  it('are counted to the newest, from 1 over on', () => {
    expect(row([1, 1, 1])).toBe(0);
    expect(row([1, 2, 2])).toBe(2);
    expect(row([2, 2, 1])).toBe(0);
    expect(row([2, 3, 4, 2, 2])).toBe(5);
  });

  it('go on over a day that was left out, which does not count itself', () => {
    expect(row([1, 2, null, 2])).toBe(2);
  });
});

describe('a later morning', () => {
  const later = (pains: Readonly<Record<Day, number | null>>, after: number, days: number) =>
    factsAt(withMornings(pains), addDays(lastSession, after), { 'later-morning-days': days })
      .painLaterMorning;
  const [first, second, third] = [1, 2, 3].map((days) => addDays(lastSession, days)) as [Day, Day, Day];
  const leftOut = { [first]: null, [second]: 4, [third]: 5 };

  it('is not looked for unless the clinic lets it speak, nor where the next morning was answered', () => {
    expect(later(leftOut, 3, 0)).toBe('not-applicable');
    expect(later({ ...leftOut, [first]: 1 }, 3, 2)).toBe('not-applicable');
    const settings = { 'later-morning-days': 2, 'engine-version': 1 };
    expect(factsAt(withMornings(leftOut), third, settings).painLaterMorning).toBe('not-applicable');
  });

  it('speaks where there is no next morning at all, as where its pain was left open', () => {
    const of = withMornings(leftOut);
    const without = { ...of, mornings: of.mornings.filter(({ day }) => day !== first) };
    expect(factsAt(without, third, { 'later-morning-days': 2 }).painLaterMorning).toBe(4);
  });

  it('is the first one answered within the days the clinic set', () => {
    expect([1, 2, 3].map((after) => later(leftOut, after, 2))).toEqual([null, 4, 4]);
    const twoLeftOut = { ...leftOut, [second]: null };
    expect([1, 2].map((days) => later(twoLeftOut, 3, days))).toEqual([null, 5]);
  });
});

describe('usual pain told, and risen', () => {
  const of = (baselines: readonly Baseline[], settings = {}, planBeganOn?: Day) =>
    factsAt({ ...record({ baselines }), ...(planBeganOn ? { planBeganOn } : {}) }, judgedMorning, settings);
  const told = baseline({ usualPain: 2, usualPainTop: 2, provisional: true });

  it('a told usual pain is named as such, and does not count where the clinic does not let it', () => {
    expect(of([told])).toMatchObject({ usualPain: 2, usualPainProvisional: true });
    expect(of([baseline()])).toMatchObject({ usualPain: 1, usualPainProvisional: false });
    expect(of([told], { 'provisional-usual': 0 })).toMatchObject({
      usualPain: null,
      usualPainProvisional: false,
      usualPainRise: null,
    });
    expect(of([told], { 'provisional-usual': 0, 'engine-version': 1 }).usualPain).toBe(2);
  });

  it('the rise is counted from the first usual pain of the plan to the one in force', () => {
    const later = (usualPain: number, days: number, changed: Partial<Baseline> = {}) =>
      baseline({ usualPain, usualPainTop: usualPain, setOn: addDays(firstMonday, days), ...changed });
    expect(of([]).usualPainRise).toBeNull();
    expect(of([told]).usualPainRise).toBe(0);
    expect(of([told, later(5, 10)]).usualPainRise).toBe(3);
    expect(of([told, later(5, 10), later(1, 14)]).usualPainRise).toBe(-1);
    expect(
      of([baseline({ usualPain: null, usualPainTop: null }), later(3, 5), later(5, 10)]).usualPainRise,
    ).toBe(2);
    // A baseline of an earlier plan: the one in force when this plan began is its first.
    const three = [told, later(4, 6), later(5, 10)];
    expect([5, 6, 8].map((days) => of(three, {}, addDays(firstMonday, days)).usualPainRise)).toEqual([
      3, 1, 1,
    ]);
  });

  it('a rise a clinician acknowledged is no rise any more, and the next one counts from there', () => {
    const later = (usualPain: number, days: number, changed: Partial<Baseline> = {}) =>
      baseline({ usualPain, usualPainTop: usualPain, setOn: addDays(firstMonday, days), ...changed });
    const acknowledged = later(5, 10, { riseAcknowledged: true });
    expect(of([told, acknowledged]).usualPainRise).toBe(0);
    expect(of([told, acknowledged, later(7, 14)]).usualPainRise).toBe(2);
  });

  it('a value the engine tightened keeps the age of the one a clinician set', () => {
    const tightened = baseline({ setOn: judgedMorning, tightenedFrom: firstMonday });
    expect(of([tightened]).baselineAgeDays).toBe(of([baseline()]).baselineAgeDays);
  });
});

describe('the slow-rise signal', () => {
  const spread = { standardDeviation: 0.6, values: 14 };
  const signal = (calmDays: number, settings = {}, changed: Partial<Baseline> = {}): boolean => {
    const mornings: readonly MorningRecord[] = record().mornings.map((one, place, all) =>
      morning(one.day, { pain: place < all.length - calmDays ? 4 : 1 }),
    );
    const baselines = [baseline({ morningSpread: spread, ...changed })];
    return factsAt(record({ baselines, mornings }), judgedMorning, settings).symptomSignal;
  };

  it('goes out after seven answered mornings within the band, not after six; in version 1 it stayed', () => {
    expect([6, 7, 8].map((days) => signal(days))).toEqual([true, false, false]);
    expect(signal(8, { 'engine-version': 1 })).toBe(true);
    expect(signal(7, { 'signal-calm-mornings': 8 })).toBe(true);
  });
});

describe('more repetitions than planned', () => {
  const overdone = (repetitions: number | null, settings = {}, dose = kneeDose): boolean => {
    const by = version({ dose });
    const done = session(lastSession, {}, {}, [by]);
    const sets = done.sets.map((set, place) => (place === 0 ? { ...set, repetitions } : set));
    const of = { ...withSession(record(), { ...done, sets }), prescriptions: [by] };
    return factsAt(of, judgedMorning, settings).overdone;
  };

  it('are more than a fifth over the top of the band in one set', () => {
    // The band ends at 20: a fifth more is 24.
    expect([23, 24, 25].map((count) => overdone(count))).toEqual([false, false, true]);
    const long = { ...kneeDose, repetitions: { low: 15, high: 500 } };
    expect([600, 601].map((count) => overdone(count, {}, long))).toEqual([false, true]);
    expect(overdone(null)).toBe(false);
    expect(overdone(25, { 'engine-version': 1 })).toBe(false);
    expect([22, 23].map((count) => overdone(count, { 'overdone-repetitions': 10 }))).toEqual([false, true]);
  });
});

describe('boundaries of days', () => {
  it('a fall on the day of a session in which the joint gave way, or the day after, is with an injury; the day before and two days after are not', () => {
    const gave = withSession(record(), session(lastSession, {}, { gaveWay: true }));
    const flags = (after: number) =>
      factsAt(
        { ...gave, events: [{ day: addDays(lastSession, after), kind: 'fall', joint: null }] },
        addDays(lastSession, 4),
      ).redFlags;
    const fell = ['fall-with-injury'];
    expect([-1, 0, 1, 2].map(flags)).toEqual([[], fell, fell, []]);
  });

  it('an answer on tiredness speaks for the day it was given and six more, not for the seventh after it', () => {
    const tired = (daysBack: number) =>
      factsAt(
        record({
          baselines: [baseline({ usualFatigue: 2 })],
          mornings: record().mornings.map((one) => ({
            ...one,
            fatigue: one.day === addDays(judgedMorning, -daysBack) ? 5 : ('not-applicable' as const),
          })),
        }),
      ).fatigueRise;
    expect([0, 5, 6, 7, 8].map(tired)).toEqual([3, 3, 3, null, null]);
  });
});
