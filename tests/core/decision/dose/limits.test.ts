/** Limits a clinician entered, at their days and their kilograms. */
import { describe, expect, it } from 'vitest';
import {
  forbidsHarderVariation,
  isOverCeiling,
  limitsInForce,
  loadCeilingKg,
  nextLimitFrom,
  withinLoadLimit,
} from '#core/decision/dose/limits.ts';
import type { Limit } from '#core/record/limit.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { variation } from '../propose.ts';
import { judgedMorning, knee, kneeDose } from '../small-record.ts';

const day = dayNumber(judgedMorning);
const on = (days: number) => addDays(judgedMorning, days);

const limit = (changed: Partial<Limit> = {}): Limit => ({
  joint: knee,
  kind: 'load-limit',
  limitKg: 9,
  from: on(-10),
  to: null,
  author: 'surgeon',
  ...changed,
});
const none = (changed: Partial<Limit> = {}) => limit({ kind: 'none', limitKg: null, ...changed });
const inForce = (...limits: readonly Limit[]) => limitsInForce(limits, [knee, 'left-hip'], day);

describe('limits in force', () => {
  it('begin on their first day', () => {
    const begun = [-1, 0, 1].map((from) => inForce(limit({ from: on(from) })).length);
    expect(begun).toEqual([1, 1, 0]);
  });

  it('are over from the day they were lifted on', () => {
    const left = [-1, 0, 1].map((lifted) => inForce(limit({ liftedOn: on(lifted) })).length);
    expect(left).toEqual([0, 0, 1]);
  });

  it('bind past their last day, and say so from the day after it', () => {
    const expired = [-1, 0, 1].map((to) => inForce(limit({ to: on(to) }))[0]?.isExpired);
    expect(expired).toEqual([true, false, false]);
    expect(inForce(limit())[0]?.isExpired).toBe(false);
  });

  it('are ended by a later word that there is none, of this joint and of no other', () => {
    const left = [-11, -10, -9].map((from) => inForce(limit(), none({ from: on(from) })).length);
    expect(left).toEqual([1, 1, 0]);
    expect(inForce(limit(), none({ from: on(-1), joint: 'left-hip' }))).toHaveLength(1);
    expect(inForce(limit(), limit({ from: on(-1), joint: 'left-hip' }))).toHaveLength(2);
    // A newer limit says nothing of the older one.
    expect(inForce(limit(), limit({ from: on(-1), limitKg: 12 }))).toHaveLength(2);
    expect(inForce(none())).toEqual([]);
  });
});

describe('the day from which a plan of today no longer knows what binds', () => {
  const next = (...limits: readonly Limit[]) => nextLimitFrom(limits, judgedMorning);

  it('is the first day of a limit that begins later, not of one that binds already', () => {
    expect([-1, 0, 1].map((from) => next(limit({ from: on(from) })))).toEqual([null, null, on(1)]);
    expect(next(limit({ from: on(9) }), limit({ from: on(4), joint: 'left-hip' }))).toBe(on(4));
  });

  it('is nobody’s where it was lifted before it began, or is a word that there is none', () => {
    expect([3, 4, 5].map((lifted) => next(limit({ from: on(4), liftedOn: on(lifted) })))).toEqual([
      null,
      null,
      on(4),
    ]);
    expect(next(none({ from: on(4) }))).toBeNull();
  });
});

describe('the heaviest load that limits leave', () => {
  it('is the lowest of them, and no figure is no bound', () => {
    expect(loadCeilingKg(inForce(limit(), limit({ limitKg: 7 })))).toBe(7);
    expect(loadCeilingKg(inForce(limit({ kind: 'weight-bearing', limitKg: 5 })))).toBe(
      Number.POSITIVE_INFINITY,
    );
    expect(loadCeilingKg(inForce(limit({ limitKg: null })))).toBe(Number.POSITIVE_INFINITY);
  });

  it('is compared to the milligram', () => {
    expect([8.999999, 9, 9.000001].map((kg) => isOverCeiling(kg, 9))).toEqual([false, false, true]);
  });

  it('is met on the heaviest load owned within it; added load can always be left off', () => {
    expect(withinLoadLimit(kneeDose, 10, [8, 9])).toEqual(kneeDose);
    expect(withinLoadLimit(kneeDose, 9, [8, 9, 10])).toMatchObject({ loadKg: 9 });
    expect(withinLoadLimit(kneeDose, 7, [8, 9, 10])).toBeNull();
    const added = { ...variation, addedKg: 4 };
    expect(withinLoadLimit(added, 3, [1, 2, 3, 4])).toMatchObject({ addedKg: 3 });
    expect(withinLoadLimit(added, 3, [4])).toMatchObject({ addedKg: 0 });
  });

  it('a limit that is no number of kilograms keeps a harder variation away; one in kilograms does not', () => {
    expect(forbidsHarderVariation(inForce(limit()))).toBe(false);
    expect(forbidsHarderVariation(inForce(limit({ limitKg: null })))).toBe(true);
    expect(forbidsHarderVariation(inForce(limit(), limit({ kind: 'weight-bearing', limitKg: 5 })))).toBe(
      true,
    );
  });
});
