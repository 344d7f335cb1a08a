/**
 * Exact conversion between units of one quantity. Mass and force are different quantities: what a
 * hung mass pulls is asked for by its own unit, kilogram-force.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, type Outcome, type Refusal, refuse } from '../outcome.ts';
import {
  type ExactFactor,
  kilogramsPerPound,
  metresPerFoot,
  metresPerInch,
  newtonMetresPerFootPound,
  newtonsPerKilogramForce,
  newtonsPerPoundForce,
  over,
  times,
} from './units.ts';

export const convertibleUnits = [
  'kg',
  'g',
  '[lb_av]',
  'N',
  'kgf',
  '[lbf_av]',
  'N.m',
  '[lbf_av].[ft_i]',
  'm',
  'cm',
  '[in_i]',
  '[ft_i]',
] as const;
export type ConvertibleUnit = (typeof convertibleUnits)[number];

interface UnitRow {
  readonly quantity: 'mass' | 'force' | 'moment' | 'length';
  /** One of the unit in kg, N, N.m or m. */
  readonly factor: ExactFactor;
}

const one: ExactFactor = { numerator: 1, denominator: 1 };

const units: Readonly<Record<ConvertibleUnit, UnitRow>> = {
  kg: { quantity: 'mass', factor: one },
  g: { quantity: 'mass', factor: { numerator: 1, denominator: 1000 } },
  '[lb_av]': { quantity: 'mass', factor: kilogramsPerPound },
  N: { quantity: 'force', factor: one },
  kgf: { quantity: 'force', factor: newtonsPerKilogramForce },
  '[lbf_av]': { quantity: 'force', factor: newtonsPerPoundForce },
  'N.m': { quantity: 'moment', factor: one },
  '[lbf_av].[ft_i]': { quantity: 'moment', factor: newtonMetresPerFootPound },
  m: { quantity: 'length', factor: one },
  cm: { quantity: 'length', factor: { numerator: 1, denominator: 100 } },
  '[in_i]': { quantity: 'length', factor: metresPerInch },
  '[ft_i]': { quantity: 'length', factor: metresPerFoot },
};

interface Conversion {
  readonly value: number;
  readonly from: ConvertibleUnit;
  readonly to: ConvertibleUnit;
}

/** One quantity on both sides; asked before the numbers are looked at. */
const sameQuantity = ({ from, to }: Conversion): readonly Refusal[] => {
  if (units[from].quantity === units[to].quantity) return [];
  const reason = `${from} measures ${units[from].quantity}, ${to} measures ${units[to].quantity}. Choose two units of one quantity.`;
  return [{ field: 'input.to', code: 'inconsistent', reason }];
};

export const convertUnit = (input: Conversion): Outcome<{ readonly value: number }> => {
  const [refusal] = sameQuantity(input);
  if (refusal) return refuse('to', refusal.code, refusal.reason);
  if (input.from === input.to) return answer({ value: input.value });
  return answer({ value: over(times(input.value, units[input.from].factor), units[input.to].factor) });
};

export const unitConversionRow = calculation({
  id: 'unit-conversion',
  title: 'Exact conversion between units',
  area: 'strength',
  input: [
    { name: 'value', kind: 'number', unit: '1', min: 0, max: 1_000_000 },
    { name: 'from', kind: 'enum', values: convertibleUnits, about: 'UCUM code.' },
    { name: 'to', kind: 'enum', values: convertibleUnits, about: 'UCUM code.' },
  ],
  result: [{ name: 'value', unit: '1', about: 'In the unit asked for.' }],
  citations: [{ source: 'ucum-2.2', locator: 'unit file, revision 2024-06-17', mark: 'seen' }],
  consistent: sameQuantity,
  calculate: convertUnit,
  example: { value: 10, from: '[lb_av]', to: 'kg' },
});
