/** A load far from the person's own earlier one, or from what the body weight makes likely, is asked about with both figures. */
import { describe, expect, it } from 'vitest';
import { unlikelyLoad, unlikelyRequest } from '#core/assessment/measurements/likely-load.ts';
import type { Measurement, MeasurementOf } from '#core/assessment/measurements/measurement.ts';
import { unlikely } from '#core/assessment/measurements/measurement-checks.ts';

type Test = MeasurementOf<'repetitions-to-failure'>;

const set = (loadKg: number, over: Partial<Test> = {}): Test => ({
  kind: 'repetitions-to-failure',
  day: '2026-03-02',
  exerciseId: 'knee-extension-seated',
  side: 'right',
  loadKg,
  repetitions: 8,
  ...over,
});
const weight = (massKg: number): Measurement => ({ kind: 'body-mass', day: '2026-03-01', massKg });

// Shares of body weight are choices of this project: one leg 0.8, both legs 1.5, one arm 0.4, both arms 0.8, trunk 0.5.
describe('beside the body weight', () => {
  const one = 100;
  it.each([
    ['one leg', 'knee-extension-seated', 'right', 80],
    ['both legs', 'sit-to-stand-chair', 'both', 150],
    ['one arm', 'curl-seated', 'right', 40],
    ['both arms', 'chest-press-lying', 'both', 80],
    ['the trunk', 'belly-press', 'both', 50],
  ] as const)('%s is asked from over its share', (_, exerciseId, side, most) => {
    const asked = (loadKg: number) => unlikelyLoad(set(loadKg, { exerciseId, side }), [weight(one)]).length;
    expect([asked(most - 0.1), asked(most), asked(most + 0.1)]).toEqual([0, 0, 1]);
  });

  it('of 70 kg where none is on record, and says so', () => {
    expect(unlikelyLoad(set(56), [])).toEqual([]);
    expect(unlikelyLoad(set(56.1), []).join()).toMatch(/a body weight of 70 kg \(none is on record\)/);
  });

  it('names both figures: the slip of 250 kg by somebody of 68 kg', () => {
    expect(unlikely(set(250), [weight(68)])).toEqual([
      '250 kg is 3.7 times the body weight of 68 kg on 2026-03-01; above 0.8 times it is unlikely in this exercise. Is it right?',
    ]);
  });
});

describe('beside the last load of the same exercise and side', () => {
  // Twice and half are choices of this project.
  it.each([
    [7.9, 0],
    [8, 0],
    [8.1, 1],
    [2.1, 0],
    [2, 0],
    [1.9, 1],
  ])('of 4 kg, %f kg brings %i questions', (loadKg, count) => {
    expect(unlikelyLoad(set(loadKg), [weight(70), set(4)])).toHaveLength(count);
  });

  it('names both figures', () => {
    expect(unlikelyLoad(set(12), [weight(70), set(4)])).toEqual([
      '12 kg is 3.0 times the 4 kg of 2026-03-02. Is it right?',
    ]);
  });

  it('is not asked of another exercise or side, nor where either was done without a load', () => {
    const other = [set(4, { side: 'left' }), set(4, { exerciseId: 'sit-to-stand-chair' })];
    expect(unlikelyLoad(set(20), [weight(70), ...other])).toEqual([]);
    expect(unlikelyLoad(set(20), [weight(70), set(0)])).toEqual([]);
    expect(unlikelyLoad(set(0), [weight(70), set(4)])).toEqual([]);
  });
});

it('a maximum in a request is held against the body weight, a load against both', () => {
  const request = { exerciseId: 'knee-extension-seated', side: 'right' } as const;
  const known = [weight(70), set(4)];
  expect(unlikelyRequest({ ...request, knownOneRepMaxKg: 40 }, known)).toEqual([]);
  expect(unlikelyRequest({ ...request, knownOneRepMaxKg: 57 }, known)).toHaveLength(1);
  expect(unlikelyRequest({ ...request, loadKg: 9 }, known)).toHaveLength(1);
  expect(unlikelyRequest({ ...request, loadKg: 1 }, known)).toEqual([]);
  expect(unlikelyRequest({ ...request, loadKg: 57 }, known)).toHaveLength(2);
  expect(unlikelyRequest(request, known)).toEqual([]);
});
