/** Which mornings speak, and how two of one day are read together: known or not, trusted or not, first or last. */
import { describe, expect, it } from 'vitest';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { Baseline, JointMorningAnswers, MorningRecord, PatientRecord } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
import {
  baseline,
  judgedMorning,
  knee,
  lastSession,
  morning,
  noonOf,
  record,
  withMorning,
} from '../small-record.ts';

const factsAt = (of: PatientRecord, settings = {}) => factsFor(of, knee, noonOf(judgedMorning), settings);
const noon = noonOf(judgedMorning).instant;
const back = (days: number): Day => addDays(judgedMorning, -days);
const mornings = (...list: readonly MorningRecord[]) => record({ mornings: list });

describe('two answers on one day', () => {
  const both = (first: Partial<JointMorningAnswers>, second: Partial<JointMorningAnswers>) => {
    const a = morning(judgedMorning, first, { id: 'a' });
    const b = morning(judgedMorning, second, { id: 'b' });
    return [mornings(a, b), mornings({ ...b, id: 'a' }, { ...a, id: 'b' })].map((of) => factsAt(of));
  };

  it('one not asked and one left open read as not asked, in either order', () => {
    const notAsked = { swelling: 'not-applicable', stiffnessMinutes: 'not-applicable' } as const;
    for (const facts of both(notAsked, { swelling: null, stiffnessMinutes: null }))
      expect(facts).toMatchObject(notAsked);
  });

  it('one answered and one not asked or left open read as answered, in either order', () => {
    for (const silent of ['not-applicable', null] as const)
      for (const facts of both(
        { swelling: 'none', stiffnessMinutes: 0 },
        { swelling: silent, stiffnessMinutes: silent },
      ))
        expect(facts).toMatchObject({ swelling: 'none', stiffnessMinutes: 0 });
  });

  it('answer the flare question once it is answered in one of them, in either order', () => {
    for (const facts of both({ flare: false }, { flare: null })) expect(facts.redFlags).toEqual([]);
  });
});

describe('a flare', () => {
  it('is counted from the first morning there is', () => {
    const days = [2, 1, 0].map((ago) => morning(back(ago), { flare: true }));
    expect(factsAt(mornings(...days)).flareDays).toBe(3);
  });
});

describe('a pain score', () => {
  const quiet = [6, 5, 4, 3].map((ago) => morning(back(ago), { pain: 0 }));
  const mean = (changed: Partial<MorningRecord>) =>
    factsAt(mornings(...quiet, morning(back(2), { pain: 5 }, changed))).morningPainMean7;

  it('counts in the mean of the week once it is known and its clock is trusted', () => {
    expect([noon, noon + 1].map((recordedAt) => mean({ recordedAt }))).toEqual([1, 0]);
    expect(mean({ clockDoubtful: true })).toBe(0);
  });

  it('of a second answer on one day is no second morning', () => {
    const again = morning(back(3), { pain: 9 }, { id: 'z' });
    expect(factsAt(mornings(...quiet, again)).morningPainMean7).toBe(0);
    expect(factsAt(mornings(...quiet.slice(1), again)).morningPainMean7).toBeNull();
  });

  it('of the morning before is the last one answered, known and trusted', () => {
    const earlier = morning(back(2), { pain: 3 });
    const over = (pain: number | null, changed: Partial<MorningRecord> = {}) =>
      factsAt(mornings(earlier, morning(lastSession, { pain }, changed))).previousMorningOverTop;
    expect([over(1), over(2), over(null)]).toEqual([false, true, true]);
    expect([noon, noon + 1].map((recordedAt) => over(1, { recordedAt }))).toEqual([false, true]);
    expect(over(1, { clockDoubtful: true })).toBe(true);
  });

  it('looked back for where no session is judged is that of today or before', () => {
    const of = (...list: readonly MorningRecord[]) => factsAt({ ...mornings(...list), sessions: [] });
    expect(of(morning(judgedMorning, { pain: 3 }))).toMatchObject({
      previousMorningOverTop: true,
      twoOverBefore: true,
    });
    expect(of(morning(judgedMorning, { pain: 1 }))).toMatchObject({
      previousMorningOverTop: false,
      twoOverBefore: false,
    });
  });

  it('without a time of day counts as told before one that has it', () => {
    const [with_, without] = [
      morning(judgedMorning, { pain: 4 }, { id: 'a', localMinute: 480 }),
      morning(judgedMorning, { pain: 2 }, { id: 'b', recordedAt: noon }),
    ];
    expect(factsAt(mornings(with_, without)).painNextMorning).toBe(2);
  });
});

describe('the slow-rise signal', () => {
  // Usual 1 and an allowance of 0.5: a morning of 4 adds 2.5, of 3 adds 1.5; over 4 it is there.
  const risen = (list: readonly MorningRecord[], changed: Partial<Baseline> = {}) => {
    const set = baseline({
      setOn: back(list.length),
      morningSpread: { standardDeviation: 1, values: 14 },
      ...changed,
    });
    return factsAt(record({ baselines: [set], mornings: list }), {
      'signal-interval': 4,
      'signal-inflation': 1,
    }).symptomSignal;
  };
  const rows = (...pains: readonly number[]) =>
    pains.map((pain, place) => morning(back(pains.length - 1 - place), { pain }));

  it('begins its sum again from nothing, not from more or less', () => {
    expect(risen(rows(0, 4, 3))).toBe(false);
    expect(risen(rows(0, 4, 3, 2))).toBe(true);
  });

  it('reads no morning that is not known yet or whose clock is in doubt, and the first of a day', () => {
    const last = (changed: Partial<MorningRecord>) =>
      risen([...rows(4, 4).slice(0, 1), morning(judgedMorning, { pain: 4 }, changed)]);
    expect([noon, noon + 1].map((recordedAt) => last({ recordedAt }))).toEqual([true, false]);
    expect(last({ clockDoubtful: true })).toBe(false);
    const again = morning(judgedMorning, { pain: 9 }, { id: 'z' });
    expect(risen([...rows(4, 1), again])).toBe(false);
  });

  it('is not there without a usual pain, or before enough mornings show the scatter', () => {
    expect(risen(rows(9, 9), { usualPain: null, usualPainTop: null })).toBe(false);
    const values = (count: number) => ({ morningSpread: { standardDeviation: 1, values: count } });
    expect([13, 14].map((count) => risen(rows(9, 9), values(count)))).toEqual([false, true]);
  });

  it('goes out after calm mornings in a band a clinician widened', () => {
    const calm = rows(9, 9, 2, 2, 2, 2, 2, 2, 2);
    expect([1, 2].map((usualPainTop) => risen(calm, { usualPainTop }))).toEqual([true, false]);
  });

  it('is put out after seven of them from the first on, not after six', () => {
    // Inside a band up to 3 each still adds 1.5.
    const of = (count: number) => risen(rows(...Array(count).fill(3)), { usualPainTop: 3 });
    expect([2, 6, 7].map(of)).toEqual([false, true, false]);
  });

  it('is put out by calm mornings in a row alone: one over the band begins the row anew', () => {
    expect(risen(rows(9, 9, 1, 1, 1, 2, 1, 1, 1, 1, 1, 1))).toBe(true);
    expect(risen(rows(9, 9, 1, 1, 1, 2, 1, 1, 1, 1, 1, 1, 1))).toBe(false);
  });
});

it('a score on the morning after a session that is known late speaks from then on', () => {
  const late = (recordedAt: number) =>
    factsAt(withMorning(record(), morning(judgedMorning, { pain: 4 }, { recordedAt }))).painNextMorning;
  expect([noon, noon + 1].map(late)).toEqual([4, null]);
});
