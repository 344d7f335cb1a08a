/** A value far from the last one of the very same thing is asked about; of another limb, side or cuff it is not compared. */
import { expect, it } from 'vitest';
import { farFromLast } from '#core/assessment/measurements/far-from-last.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';

const grip = (forceKg: number, side: 'left' | 'right' = 'left'): Measurement => ({
  kind: 'grip',
  day: '2026-03-02',
  side,
  forceKg,
});

it.each([
  [20, 30, 0],
  [20, 30.1, 1],
  [20, 10, 0],
  [20, 9.9, 1],
  [0, 30, 0],
])('grip of %f kg last time and %f now: %i questions (from over 50 %%)', (last, now, count) => {
  expect(farFromLast(grip(now), grip(last))).toHaveLength(count);
});

it('names both figures with unit and day', () => {
  expect(farFromLast(grip(40), grip(20))).toEqual([
    '40 kg is 100 % away from 20 kg on 2026-03-02. Is it right?',
  ]);
});

it('is not asked of the other side, of another cuff, nor where nothing was measured before', () => {
  expect(farFromLast(grip(40, 'right'), grip(20))).toEqual([]);
  expect(farFromLast(grip(40), null)).toEqual([]);
  const pressure = (firstMmhg: number, cuffWidthCm: number): Measurement => ({
    kind: 'limb-occlusion-pressure',
    day: '2026-03-02',
    limb: 'leg',
    side: 'left',
    cuffWidthCm,
    position: 'seated',
    method: 'doppler',
    firstMmhg,
    secondMmhg: firstMmhg,
  });
  expect(farFromLast(pressure(250, 8), pressure(150, 13))).toEqual([]);
  expect(farFromLast(pressure(250, 13), pressure(150, 13))).toHaveLength(1);
});

it.each([
  [71, 78.1, 0],
  [71, 78.2, 1],
])('body mass of %f kg and then %f: %i questions (from over 10 %%)', (last, now, count) => {
  const mass = (massKg: number): Measurement => ({ kind: 'body-mass', day: '2026-03-02', massKg });
  expect(farFromLast(mass(now), mass(last))).toHaveLength(count);
});

const pressure = (systolicMmhg: number, diastolicMmhg: number): Measurement => ({
  kind: 'blood-pressure',
  day: '2026-03-02',
  systolicMmhg,
  diastolicMmhg,
  position: 'seated',
});

it.each([
  [130, 80, 0],
  [131, 80, 1],
  [100, 104, 0],
  [100, 105, 1],
  [131, 105, 2],
])(
  'blood pressure 100/80 and then %i/%i: %i questions (from over 30 %%, each figure by itself)',
  (high, low, count) => {
    expect(farFromLast(pressure(high, low), pressure(100, 80))).toHaveLength(count);
  },
);
