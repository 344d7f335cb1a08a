/**
 * Body-mass index: body mass over stature squared, with the usual adult bands.
 *
 * It does not see muscle or fat and says nothing about strength. Here it only raises flags:
 * underweight locks nutrition targets, overweight with joint disease starts with no surplus.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';
import { massKg, statureCm } from './body-fields.ts';

/** Each band runs from its lower bound, which belongs to it. */
const bands = [
  { band: 'obese', from: 30 },
  { band: 'overweight', from: 25 },
  { band: 'middle', from: 18.5 },
  { band: 'underweight', from: 0 },
] as const;
export type BodyMassBand = (typeof bands)[number]['band'];

export const bodyMassIndex = (mass: number, stature: number): number => mass / (stature / 100) ** 2;

export const bodyMassBand = (index: number): BodyMassBand =>
  bands.find((row) => index >= row.from)?.band ?? 'underweight';

export const bodyMassIndexRow = calculation({
  id: 'body-mass-index',
  title: 'Body-mass index',
  area: 'nutrition',
  input: [massKg, statureCm],
  result: [
    { name: 'bodyMassIndex', unit: 'kg/m2' },
    { name: 'band', unit: '', about: 'underweight, middle, overweight or obese' },
  ],
  citations: [
    {
      source: 'bmi-bands',
      locator: 'adult bands 18.5, 25, 30',
      mark: 'second-hand',
      remark: 'Read on a formula page; the full text of the standard was not seen.',
    },
  ],
  calculate: (input) => {
    const index = bodyMassIndex(input.massKg, input.statureCm);
    return answer({ bodyMassIndex: index, band: bodyMassBand(index) });
  },
  example: { massKg: 70, statureCm: 175 },
});
