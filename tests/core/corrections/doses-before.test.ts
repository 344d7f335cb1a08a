/** Doses worked out while a measurement stood that was corrected later are found; those of before and after are not. */
import { expect, it } from 'vitest';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { dosesBeforeCorrection } from '#core/corrections/doses-before.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';

const set: Measurement = {
  kind: 'repetitions-to-failure',
  day: '2026-03-02',
  exerciseId: lowLoadDose.exerciseId,
  side: 'right',
  loadKg: 250,
  repetitions: 8,
};
const version = (number: number, recordedAt: number, over: object = {}) => ({
  id: `v${number}`,
  itemId: 'item',
  version: number,
  dose: lowLoadDose as Dose,
  origin: 'clinician' as const,
  recordedAt,
  ...over,
});
const found = (versions: readonly ReturnType<typeof version>[], measurement: Measurement = set) => [
  ...dosesBeforeCorrection(versions, [{ measurement, enteredAt: 10, correctedAt: 20 }]),
];

it.each([
  [9, []],
  [10, ['v1']],
  [19, ['v1']],
  [20, []],
])('entered at 10 and corrected at 20: a dose worked out at %i', (at, ids) => {
  expect(found([version(1, at)])).toEqual(ids);
});

it('what went on from such a dose goes with it, until a clinician works one out anew', () => {
  const step = version(2, 30, { origin: 'progress' });
  expect(found([version(1, 15), step, version(3, 40), version(4, 50, { origin: 'ease-back' })])).toEqual([
    'v1',
    'v2',
  ]);
});

it('another exercise, side or method is not meant', () => {
  const dosed = (over: object) => found([version(1, 15, { dose: { ...lowLoadDose, ...over } })]);
  expect([dosed({ exerciseId: 'sit-to-stand-chair' }), dosed({ side: 'left' })]).toEqual([[], []]);
  expect(dosed({ method: 'variation' })).toEqual([]);
  const mass: Measurement = { kind: 'body-mass', day: '2026-03-02', massKg: 70 };
  expect(found([version(1, 15, { dose: { ...lowLoadDose, method: 'variation' } })], mass)).toEqual(['v1']);
  expect(found([version(1, 15)], mass)).toEqual([]);
});
