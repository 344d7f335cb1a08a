/** How the invented joint answers; the figures are the model's own, typed again. */
import { describe, expect, it } from 'vitest';
import { inventedJoint } from '#simulation/trial/invented-joint.ts';
import { personTypes } from '#simulation/trial/person-types.ts';
import { peopleOf } from '#simulation/trial/trial.ts';
import { stimulusOf, stressOf } from '#simulation/trial/work.ts';

const steady = { ...personTypes[0]!, flaresPerWeek: 0, creep: 0 };
const quiet = {
  ...peopleOf(personTypes[0]!, { people: 1, weeks: [1], seed: 1 })[0]!.days[0]!,
  // No chance lies over it, whatever irritates the joint.
  flare: 1,
};
const start = { loadKg: 10, sets: [15, 15, 15] };
const law = 'first';

describe('stress on the joint', () => {
  it('is 1 for the first dose under both laws and follows the load in full', () => {
    for (const one of ['first', 'second'] as const) {
      expect(stressOf(start, one)).toBeCloseTo(1, 10);
      expect(stressOf({ ...start, loadKg: 12 }, one)).toBeCloseTo(1.2, 10);
    }
  });

  it('counts repetitions by their root under the first law and in full under the second', () => {
    const four = { loadKg: 10, sets: [15, 15, 15, 15] };
    expect(stressOf(four, 'first')).toBeCloseTo(Math.sqrt(4 / 3), 10);
    expect(stressOf(four, 'second')).toBeCloseTo(4 / 3, 10);
  });
});

describe('overload', () => {
  it('hurts by 5 points for 100 % over tolerance, more by the factor of a fragile joint, and not under it', () => {
    const at = (tolerance: number, overload = 1): number =>
      inventedJoint({ type: { ...steady, overload }, tolerance }, { law, slope: 1 }).overload(start);
    expect(at(1.01)).toBe(0);
    expect(at(1)).toBe(0);
    expect(at(0.5)).toBeCloseTo(5, 10);
    expect(at(0.5, 1.6)).toBeCloseTo(8, 10);
  });

  it('comes 35 % the same evening and 65 % overnight, and 45 % of it clears a day', () => {
    const joint = inventedJoint({ type: steady, tolerance: 0.5 }, { law, slope: 1 });
    joint.load(start);
    expect(joint.irritation()).toBeCloseTo(1.75, 10);
    joint.wake(quiet, 1);
    expect(joint.irritation()).toBeCloseTo(1.75 * 0.55 + 3.25, 10);
    joint.wake(quiet, 2);
    expect(joint.irritation()).toBeCloseTo((1.75 * 0.55 + 3.25) * 0.55, 10);
  });

  it('brings no relief, which tolerated work does, up to 0.8', () => {
    const worked = (tolerance: number): number => {
      const joint = inventedJoint({ type: steady, tolerance }, { law, slope: 0 });
      for (let session = 0; session < 300; session++) joint.load(start);
      return joint.level();
    };
    expect(worked(0.9)).toBe(0);
    expect(worked(1.3)).toBeCloseTo(-0.8, 3);
  });

  it('leaves tolerance as it was, which tolerated work raises to at most half as much again', () => {
    const heavy = (tolerance: number, sessions: number): number => {
      const joint = inventedJoint({ type: steady, tolerance }, { law, slope: 1 });
      for (let session = 0; session < sessions; session++) joint.load(start);
      return joint.overload({ loadKg: 20, sets: [15, 15, 15] });
    };
    expect(heavy(0.9, 40)).toBeCloseTo(heavy(0.9, 0), 10);
    expect(heavy(1, 1)).toBeLessThan(heavy(1, 0));
    expect(heavy(1, 500)).toBeCloseTo(5 * (2 / 1.5 - 1), 10);
  });
});

describe('what work gives the muscle', () => {
  it('is full with two repetitions in reserve, falls toward twelve and keeps a floor of 0.12', () => {
    const three = (repetitions: number): number =>
      stimulusOf({ loadKg: 10, sets: [repetitions, repetitions, repetitions] }, 1);
    expect([16, 15, 14].map(three)).toEqual([1, 1, expect.closeTo(0.9, 10)]);
    expect(three(10)).toBeCloseTo(0.5, 10);
    expect(three(5)).toBeCloseTo(0.12, 10);
    expect(three(1)).toBeCloseTo(0.12, 10);
  });

  it('falls as somebody grows stronger at the same dose', () => {
    expect(stimulusOf(start, 1.2)).toBeLessThan(stimulusOf(start, 1.1));
  });
});
