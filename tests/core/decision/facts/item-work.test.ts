/** How the sets of one line are counted against what was asked. */
import { describe, expect, it } from 'vitest';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import { wasEasier } from '#core/decision/facts/item-work.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { occlusion } from '../propose.ts';
import {
  judgedMorning,
  knee,
  kneeDose,
  lastSession,
  noonOf,
  record,
  session,
  version,
} from '../small-record.ts';

interface Done {
  readonly set: number;
  readonly repetitions: number | null;
  readonly loadKg?: number | null;
}

const factsOf = (dose: Dose, done: readonly Done[]) => {
  const by = version({ dose });
  const one = session(lastSession, {}, {}, [by]);
  const sets = done.map((set) => ({ ...one.sets[0]!, ...set }));
  const of = record({ prescriptions: [by], sessions: [{ ...one, sets }] });
  return factsFor(of, knee, noonOf(judgedMorning));
};
const percentOf = (dose: Dose, done: readonly Done[]) => factsOf(dose, done).repetitionsDonePercent;
const numbered = (...repetitions: readonly (number | null)[]): readonly Done[] =>
  repetitions.map((count, place) => ({ set: place + 1, repetitions: count }));

describe('the share of what was asked', () => {
  it('is not raised by a set nobody asked for', () => {
    expect(percentOf(kneeDose, numbered(15, 15, 15, 15))).toBe(100);
    expect(percentOf(kneeDose, numbered(15, 15, 9, 15))).toBeCloseTo((100 * 39) / 45, 9);
    expect(percentOf(occlusion, numbered(20, 15, 15, 15, 15))).toBe(100);
    expect(percentOf(occlusion, numbered(20, 15, 15, 10, 15))).toBeCloseTo((100 * 60) / 65, 9);
  });

  it('takes the larger of two entries of one set', () => {
    const twice = (first: number, second: number) =>
      percentOf(kneeDose, [
        ...numbered(15, 15),
        { set: 3, repetitions: first },
        { set: 3, repetitions: second },
      ]);
    expect([twice(15, 6), twice(6, 15)]).toEqual([100, 100]);
  });

  it('is certain where a count left open, given in full, still falls short by one repetition of many', () => {
    const dose = { ...kneeDose, repetitions: { low: 40, high: 40 } };
    expect(percentOf(dose, numbered(39, 40, null))).toBeCloseTo((100 * 119) / 120, 9);
    expect(percentOf(dose, numbered(40, 40, null))).toBeNull();
  });

  it('is not known where a load was not said, from the lightest load on', () => {
    const without = (loadKg: number) =>
      percentOf(
        { ...kneeDose, loadKg },
        numbered(15, 15, 15).map((set) => ({ ...set, loadKg: null })),
      );
    expect([0, 0.5, 1].map(without)).toEqual([100, null, null]);
  });

  it('is all of it where nothing was asked, and none of it where a single repetition was left out', () => {
    expect(factsOf({ ...kneeDose, sets: 0 }, numbered(15))).toMatchObject({
      repetitionsDonePercent: 100,
      sessionsOnTarget: 1,
    });
    const one = { ...kneeDose, sets: 1, repetitions: { low: 1, high: 1 } };
    expect([1, 0].map((count) => percentOf(one, numbered(count)))).toEqual([100, 0]);
  });
});

describe('an easier session of a line', () => {
  it('is what its sets say, from one set on', () => {
    expect(wasEasier({ kind: 'full' }, [{ easier: true }])).toBe(true);
    expect(wasEasier({ kind: 'bad-day' }, [{ easier: false }])).toBe(false);
    expect(wasEasier({ kind: 'bad-day' }, [{ easier: true }, { easier: false }])).toBe(false);
  });

  it('is what the session says where a set does not say, or where there is none', () => {
    for (const sets of [[{}], [{ easier: true }, {}], []])
      expect([wasEasier({ kind: 'full' }, sets), wasEasier({ kind: 'bad-day' }, sets)]).toEqual([
        false,
        true,
      ]);
  });
});
