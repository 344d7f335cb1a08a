/** Which doses in force a new one would be done beside. */
import { expect, it } from 'vitest';
import { dosesBeside } from '#core/prescribing/beside.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { kneeDose } from '#tests/core/decision/small-record.ts';

const knee = { ...kneeDose, exerciseId: 'knee-extension-seated', side: 'right' } as Dose;
const as = (change: object): Dose => ({ ...knee, ...change }) as Dose;
const inForce = (dose: Dose, itemId = 'other') => [{ itemId, dose }];

it.each<[string, object]>([
  ['another method', { method: 'variation' }],
  ['another level of the exercise', { exerciseId: 'knee-extension-seated-one-kilo' }],
  ['both sides where one is asked', { side: 'both' }],
])('names the same exercise in force by %s', (_, change) => {
  expect(dosesBeside(knee, null, inForce(as(change)))).toEqual([as(change)]);
});

it.each<[string, object]>([
  ['the other side', { side: 'left', method: 'variation' }],
  ['another exercise', { exerciseId: 'clam' }],
  ['the very same, which is replaced', {}],
])('names nothing of %s', (_, change) => {
  expect(dosesBeside(knee, null, inForce(as(change)))).toEqual([]);
});

it('does not name the one it takes the place of', () => {
  const before = as({ exerciseId: 'knee-extension-seated-one-kilo' });
  expect(dosesBeside(knee, 'own', inForce(before, 'own'))).toEqual([]);
});
