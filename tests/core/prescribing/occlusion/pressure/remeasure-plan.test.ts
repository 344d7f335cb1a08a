/** When a cuff pressure is due again: by the clinic’s age, or at once where the body has changed since. */
import { expect, it } from 'vitest';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { remeasurePlan } from '#core/prescribing/occlusion/pressure/remeasure-plan.ts';
import { addDays } from '#core/time/day.ts';

const day = '2026-03-02';
const pressure = (over: object = {}): Measurement =>
  ({
    kind: 'limb-occlusion-pressure',
    day,
    limb: 'leg',
    side: 'left',
    cuffWidthCm: 11,
    position: 'seated',
    method: 'doppler',
    firstMmhg: 180,
    secondMmhg: 176,
    ...over,
  }) as Measurement;
const systolic = (on: string, systolicMmhg: number): Measurement =>
  ({ kind: 'blood-pressure', day: on, systolicMmhg, diastolicMmhg: 78, position: 'seated' }) as Measurement;
const girth = (on: string, circumferenceCm: number): Measurement =>
  ({
    kind: 'limb-circumference',
    day: on,
    limb: 'leg',
    side: 'left',
    site: 'mid-thigh',
    circumferenceCm,
  }) as Measurement;

const planOn = (today: string, ...rows: readonly Measurement[]) => remeasurePlan(rows, today, {});

it.each([
  [27, null],
  [28, null],
  [29, 'Measured 29 days ago; it may be used for 28. Measure again.'],
])('%i days later, at 28 days by the clinic’s setting', (days, why) => {
  expect(planOn(addDays(day, days), pressure())).toMatchObject([
    { lastOn: day, usableTo: '2026-03-30', why },
  ]);
});

it.each([
  [systolic(day, 120), systolic(addDays(day, 7), 139), null],
  [systolic(day, 120), systolic(addDays(day, 7), 140), 'resting systolic pressure has moved by 20 mmHg'],
  [girth(day, 52), girth(addDays(day, 7), 53.9), null],
  [girth(day, 52), girth(addDays(day, 7), 54), 'circumference has changed by 2 cm'],
])('a body that has changed asks for it at once (20 mmHg, 2 cm by setting)', (before, after, why) => {
  const [due] = planOn(addDays(day, 7), pressure(), before, after);
  if (why === null) expect(due!.why).toBeNull();
  else expect(due!.why).toContain(why);
});

it('each limb, side, cuff and position is due by itself, soonest first, by its newest reading', () => {
  const rows = [
    pressure(),
    pressure({ day: addDays(day, 5) }),
    pressure({ side: 'right', day: addDays(day, 3) }),
    pressure({ cuffWidthCm: 13, day: addDays(day, 4) }),
  ];
  expect(
    planOn(addDays(day, 6), ...rows).map(({ side, cuffWidthCm, lastOn }) => [side, cuffWidthCm, lastOn]),
  ).toEqual([
    ['right', 11, addDays(day, 3)],
    ['left', 13, addDays(day, 4)],
    ['left', 11, addDays(day, 5)],
  ]);
});

it('nothing measured is nothing planned', () => {
  expect(planOn(day)).toEqual([]);
});
