import { expect, it } from 'vitest';
import { stoodAllAlong } from '#core/decision/baseline/stood-all-along.ts';
import type { Baseline, PatientRecord } from '#core/record/record.ts';

const knee: Baseline = {
  joint: 'right-knee',
  usualPain: 2,
  usualPainTop: 3,
  acceptablePainLimit: 5,
  usualStiffnessMinutes: 10,
  usualSwelling: 'none',
  usualEffusion: 'zero',
  usualFatigue: null,
  setOn: '2026-01-10',
  setBy: 'A',
  dueForReview: true,
};

const record = (baselines: readonly Baseline[]) => ({ baselines }) as unknown as PatientRecord;

it('moves what is named and leaves the day it was set, its band and its mark for review', () => {
  const [moved] = stoodAllAlong(record([knee]), { 'right-knee': { usualPain: 4 } }, '2026-02-01').baselines;
  expect(moved).toEqual({ ...knee, usualPain: 4, usualPainTop: 5 });
  const narrow = { 'right-knee': { bandOver: 0, acceptablePainLimit: 7 } };
  expect(stoodAllAlong(record([knee]), narrow, '2026-02-01').baselines).toEqual([
    { ...knee, usualPainTop: 2, acceptablePainLimit: 7 },
  ]);
});

it('leaves other joints as they are', () => {
  const other: Baseline = { ...knee, joint: 'left-knee' };
  const values = { 'right-knee': { acceptablePainLimit: 6 } };
  expect(stoodAllAlong(record([other, knee]), values, '2026-02-01').baselines[0]).toEqual(other);
});

it('a joint without usual values by the day looked at gets them of that day', () => {
  const values = { 'right-knee': { usualPain: 3, bandOver: 1 } };
  const found = stoodAllAlong(record([{ ...knee, setOn: '2026-02-05' }]), values, '2026-02-01').baselines;
  expect(found.map(({ setOn, usualPain, usualPainTop }) => [setOn, usualPain, usualPainTop])).toEqual([
    ['2026-02-05', 3, 4],
    ['2026-02-01', 3, 4],
  ]);
});

it('nothing named is the record itself', () => {
  const same = record([knee]);
  expect(stoodAllAlong(same, {}, '2026-02-01')).toBe(same);
});
