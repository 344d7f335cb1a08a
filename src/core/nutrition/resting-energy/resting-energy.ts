/**
 * Resting energy of an adult by one named equation.
 *
 * An estimate for a group, wide for one person; it is never a diet. The default is the simple Mifflin form.
 */
import { calculation } from '#core/calculations/calculation.ts';
import type { Field, InputOf } from '#core/calculations/describe.ts';
import { needed } from '#core/calculations/needed-inputs.ts';
import { answer, type Outcome } from '#core/outcome.ts';
import { ageYears, leanMassKg, massKg, sex, statureCm } from '../body-fields.ts';
import { cunningham1980 } from './cunningham-1980.ts';
import type { RestingEnergyFormula } from './formula.ts';
import { harrisBenedict } from './harris-benedict.ts';
import { katchMcardle } from './katch-mcardle.ts';
import { mifflin, mifflinFull } from './mifflin.ts';
import { rozaShizgal } from './roza-shizgal.ts';

const input = [
  {
    name: 'formula',
    kind: 'enum',
    values: [
      'mifflin',
      'mifflin-full',
      'harris-benedict',
      'roza-shizgal',
      'katch-mcardle',
      'cunningham-1980',
    ],
    about: 'mifflin is the simple form; harris-benedict is the one of 1919.',
  },
  { ...sex, optional: true },
  { ...massKg, optional: true },
  { ...statureCm, optional: true },
  { ...ageYears, optional: true },
  { ...leanMassKg, optional: true },
] as const satisfies readonly Field[];
export type RestingEnergyInput = InputOf<typeof input>;

const formulas: Readonly<Record<RestingEnergyInput['formula'], RestingEnergyFormula>> = {
  mifflin,
  'mifflin-full': mifflinFull,
  'harris-benedict': harrisBenedict,
  'roza-shizgal': rozaShizgal,
  'katch-mcardle': katchMcardle,
  'cunningham-1980': cunningham1980,
};

export const restingEnergy = (given: RestingEnergyInput): Outcome<{ kcalPerDay: number }> => {
  const formula = formulas[given.formula];
  if (formula.from === 'lean-mass') {
    const full = needed(given, ['leanMassKg'], 'this equation takes lean mass');
    if (!full.ok) return full;
    return answer({ kcalPerDay: formula.kcalPerDay(full.result.leanMassKg) }, formula.notes());
  }
  const full = needed(given, ['sex', 'massKg', 'statureCm', 'ageYears'], 'this equation takes it');
  if (!full.ok) return full;
  const person = full.result;
  return answer(
    { kcalPerDay: formula.kcalPerDay(person.sex, person.massKg, person.statureCm, person.ageYears) },
    formula.notes(person.ageYears),
  );
};

export const restingEnergyRow = calculation({
  id: 'resting-energy',
  title: 'Resting energy by a named equation',
  area: 'nutrition',
  input,
  result: [{ name: 'kcalPerDay', unit: 'kcal/d' }],
  citations: Object.values(formulas).flatMap((formula) => formula.citations),
  calculate: restingEnergy,
  example: { formula: 'mifflin', sex: 'female', massKg: 70, statureCm: 165, ageYears: 65 },
});
