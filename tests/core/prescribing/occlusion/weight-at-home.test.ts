/** The weight of work with a cuff is one that is at home, where it is done at home. */
import { expect, it } from 'vitest';
import { proposePrescription } from '#core/prescribing/propose.ts';
import { context } from '../choice/known-patient.ts';

const request = {
  method: 'occlusion',
  exerciseId: 'knee-extension-seated',
  limb: 'leg',
  side: 'right',
  schemeId: 'thirty-then-fifteens',
  cuffKind: 'elastic-wrap',
  tightness: 6,
  secondsPerRepetition: 4,
  restSeconds: 30,
  sessionsPerWeek: 2,
} as const;

const saidOfWeight = (loadKg: number, supervised: boolean, ownedLoadsKg: readonly number[]) => {
  const outcome = proposePrescription({ ...context, ownedLoadsKg }, { ...request, loadKg, supervised });
  const refused = outcome.ok ? [] : outcome.refused;
  return refused.filter(({ field }) => field === 'input.loadKg').map(({ reason }) => reason);
};

it.each([
  [1.9, 'The nearest owned: 1 kg and 2 kg.'],
  [2.1, 'The nearest owned: 2 kg and 4 kg.'],
  [4.1, 'The nearest owned: 4 kg.'],
])('is refused with the nearest owned where it is not at home: %d kg', (loadKg, said) => {
  expect(saidOfWeight(loadKg, false, [1, 2, 4])).toEqual([expect.stringContaining(said)]);
});

it('is taken where it is at home, where there is none, and where a clinician is present', () => {
  expect(saidOfWeight(2, false, [1, 2, 4])).toEqual([]);
  expect(saidOfWeight(0, false, [])).toEqual([]);
  expect(saidOfWeight(2.1, true, [1, 2, 4])).toEqual([]);
  expect(saidOfWeight(2, true, [])).toEqual([]);
});

it('asks for the loads at home where none is recorded', () => {
  expect(saidOfWeight(2, false, [])).toEqual([expect.stringContaining('Enter the loads at home first')]);
});
