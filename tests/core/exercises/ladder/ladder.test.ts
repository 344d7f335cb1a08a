import { describe, expect, it } from 'vitest';
import { exerciseById, exercises, jointsLoaded } from '#core/exercises/catalogue.ts';
import { families } from '#core/exercises/families.ts';
import { ladder, nextLevel, previousLevel, stepBetween } from '#core/exercises/ladder/ladder.ts';

const woman = { sex: 'female', massKg: 65, statureCm: 162 } as const;

describe('Ladders', () => {
  it('orders every computed family from easier to harder', () => {
    for (const family of families.filter((entry) => entry.order === 'computed')) {
      const values = ladder(family.id, woman).map((level) => level.measure?.value);
      expect(values.length).toBeGreaterThan(0);
      expect(values, family.id).toEqual([...values].sort((a, b) => (a ?? 0) - (b ?? 0)));
      expect(values).not.toContain(undefined);
    }
  });

  it('doubles the load from two legs to one in a heel raise', () => {
    const levels = ladder('heel-raise', woman);
    const two = levels.find((level) => level.exerciseId === 'heel-raise-two-legs')!;
    const one = levels.find((level) => level.exerciseId === 'heel-raise-one-leg')!;
    expect(stepBetween(two, one).percent).toBeCloseTo(100, 9);
    expect(stepBetween(one, two).percent).toBeCloseTo(-50, 9);
  });

  it('counts a bridge per working foot: 0.215 of body mass on each of two, 0.447 on one alone', () => {
    const share = (id: string) =>
      ladder('bridge', woman).find((level) => level.exerciseId === id)?.shareOfBodyMass;
    expect(share('bridge-two-legs')).toBeCloseTo(0.215, 3);
    expect(share('bridge-one-leg')).toBeCloseTo(0.447, 3);
  });

  it('names the next harder and the next easier level with the step between', () => {
    expect(nextLevel('push-up', woman)?.rung.exerciseId).toBe('push-up-feet-raised');
    expect(previousLevel('push-up', woman)?.rung.exerciseId).toBe('incline-push-up-step');
  });

  it('has no level above the hardest, below the easiest, or beside an unknown exercise', () => {
    const levels = ladder('push-up', woman);
    expect(nextLevel(levels.at(-1)!.exerciseId, woman)).toBeNull();
    expect(previousLevel(levels[0]!.exerciseId, woman)).toBeNull();
    expect(nextLevel('no-such-exercise', woman)).toBeNull();
  });

  it('shows no step size where one of two levels has no figure', () => {
    const [press] = ladder('band-leg-push', woman);
    const [push] = ladder('push-up', woman);
    expect(stepBetween(push!, press!)).toEqual({ percent: null });
  });
});

describe('Joints an exercise loads', () => {
  it('names the joints of the worked side, and of both sides where both limbs work', () => {
    expect(jointsLoaded('knee-extension-seated', 'left')).toEqual(['left-knee', 'left-hip']);
    expect(jointsLoaded('push-up', 'left')).toContain('right-wrist');
    expect(jointsLoaded('bridge-one-leg', 'left')).toContain('right-hip');
  });

  it('refuses to call an unknown exercise free of load', () => {
    expect(() => jointsLoaded('no-such-exercise', 'left')).toThrow(RangeError);
  });

  it('keeps the catalogue findable by id', () => {
    expect(exercises.every((exercise) => exerciseById(exercise.id) === exercise)).toBe(true);
  });
});

describe('A seat too high for the person', () => {
  it('has no figure, and is not called the easiest', () => {
    const short = { sex: 'female', massKg: 50, statureCm: 140 } as const;
    const high = ladder('sit-to-stand', short).find(
      (level) => level.exerciseId === 'sit-to-stand-high-seat',
    )!;
    expect(high.measure).toBeNull();
    expect(high.effectiveLoadKg).toBeNull();
    expect(previousLevel('sit-to-stand-raised-chair', short)).toBeNull();
  });
});
