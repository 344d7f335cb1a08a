/** A usual pain that mornings have outgrown: it follows them since version 2, or waits for a clinician. */
import { describe, expect, it } from 'vitest';
import { isBaselineDueForReview } from '#core/decision/baseline/propose-baseline.ts';
import { renewedBaseline } from '#core/decision/baseline/renew.ts';
import type { Baseline } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import { baseline, firstMonday, judgedMorning, knee, morning, noonOf, record } from '../small-record.ts';

const high = baseline({ usualPain: 4, usualPainTop: 5, acceptablePainLimit: 6 });

/** The mornings of the last 14 days, oldest first; null = not answered. */
const follows = (pains: readonly (number | null)[], inForce: Baseline = high, settings = {}) => {
  const mornings = pains.map((pain, place) =>
    morning(addDays(judgedMorning, place + 1 - pains.length), { pain }),
  );
  const of = record({ baselines: [inForce], mornings });
  return renewedBaseline(of, knee, noonOf(judgedMorning), settings);
};
const tens = (...pains: readonly number[]): readonly number[] => pains;

describe('a baseline that follows better mornings', () => {
  it('needs a mean 1.5 under usual pain', () => {
    expect(follows(tens(3, 3, 3, 3, 3, 2, 2, 2, 2, 3))).toBeNull();
    expect(follows(tens(3, 3, 3, 3, 3, 2, 2, 2, 2, 2))).toMatchObject({ usualPain: 2 });
    expect(follows(tens(3, 3, 3, 3, 2, 2, 2, 2, 2, 2))).toMatchObject({ usualPain: 2 });
  });

  it('needs ten answered mornings', () => {
    expect(follows([null, 2, 2, 2, 2, 2, 2, 2, 2, 2])).toBeNull();
    expect(follows([null, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2])?.usualPain).toBe(2);
  });

  it('is the lower of the two middle mornings, and never higher than before', () => {
    expect(follows(tens(1, 1, 1, 1, 1, 3, 3, 3, 3, 3))?.usualPain).toBe(1);
    // Six mornings at usual and four far under it: the middle has not moved, so a clinician has to look.
    expect(follows(tens(4, 4, 4, 4, 4, 4, 0, 0, 0, 0))).toEqual({ ...high, dueForReview: true });
  });

  it('keeps the width a clinician gave the band, and brings the acceptable pain limit down with it', () => {
    expect(follows(tens(2, 2, 2, 2, 2, 2, 2, 2, 2, 2))).toMatchObject({
      usualPain: 2,
      usualPainTop: 3,
      acceptablePainLimit: 5,
      setOn: judgedMorning,
    });
    const lowered = { ...high, usualPain: 6, usualPainTop: 6, acceptablePainLimit: 5 };
    expect(follows(tens(4, 4, 4, 4, 4, 4, 4, 4, 4, 4), lowered)).toMatchObject({
      usualPain: 4,
      acceptablePainLimit: 5,
    });
  });

  it('keeps the day a clinician last set it, also when it follows twice', () => {
    const two = tens(2, 2, 2, 2, 2, 2, 2, 2, 2, 2);
    expect(follows(two)?.tightenedFrom).toBe(firstMonday);
    const once = { ...high, setOn: addDays(firstMonday, 5), tightenedFrom: firstMonday };
    expect(follows(two, once)?.tightenedFrom).toBe(firstMonday);
  });

  it('is no longer one that was only told', () => {
    expect(follows(tens(2, 2, 2, 2, 2, 2, 2, 2, 2, 2), { ...high, provisional: true })).not.toHaveProperty(
      'provisional',
    );
  });

  it('waits for a clinician where the clinic wants it so, and in version 1', () => {
    const two = tens(2, 2, 2, 2, 2, 2, 2, 2, 2, 2);
    const waits = { ...high, dueForReview: true };
    expect(follows(two, high, { 'tighten-usual': 0 })).toEqual(waits);
    expect(follows(two, high, { 'engine-version': 1 })).toEqual(waits);
  });

  it('stays as it is while a clinician has to look, while a correction waits, and where none is known', () => {
    const two = tens(2, 2, 2, 2, 2, 2, 2, 2, 2, 2);
    expect(follows(two, { ...high, dueForReview: true })).toBeNull();
    expect(follows(two, { ...high, correctedPending: true })).toBeNull();
    expect(follows(two, { ...high, usualPain: null, usualPainTop: null })).toBeNull();
  });
});

it('a joint without a baseline has none that is due for review', () => {
  expect(isBaselineDueForReview(record({ baselines: [] }), knee, noonOf(judgedMorning))).toBe(false);
});
