/**
 * A protein range in grams a day on a chosen basis, or a lock.
 *
 * For adults. Lean-based and body-based figures stand side by side; a low end under the general minimum of
 * 0.8 g per kg body mass is said aloud. Kidney disease, underweight, a worry about eating and pregnancy give
 * no automatic target. It does not know the person's diet, other disease or medicines.
 */
import { calculation } from '../calculations/calculation.ts';
import type { Field, InputOf } from '../calculations/describe.ts';
import { needed } from '../calculations/needed-inputs.ts';
import { answer, type Note, type Outcome, refuse } from '../outcome.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { ageYears, leanMassKg, massKg, statureCm } from './body-fields.ts';
import { bodyMassBand, bodyMassIndex } from './body-mass-index.ts';
import { kidneyFigures, kidneyLockReasons, kidneyNotes } from './kidney-lock.ts';
import { egfrField, lockQuestions, locks } from './lock-fields.ts';
import { lockCitations, lockNotes, otherLockReasons } from './nutrition-lock.ts';
import {
  basisCitations,
  bodyBases,
  generalMinimumGPerKg,
  olderThanYears,
  type ProteinBasis,
} from './protein-bases.ts';
import { nutritionDefaults, settingOf } from './settings.ts';

const input = [
  massKg,
  { ...leanMassKg, optional: true },
  ageYears,
  { ...statureCm, optional: true },
  egfrField,
  {
    name: 'basis',
    kind: 'enum',
    values: ['lean-common', 'body-isn-sports', 'body-older', 'body-older-unwell', 'kidney'],
    about: 'lean-common is common practice without a source.',
  },
  ...lockQuestions,
] as const satisfies readonly Field[];
export type ProteinTargetInput = InputOf<typeof input>;

export interface ProteinTarget {
  readonly basis: ProteinTargetInput['basis'];
  readonly lowG: number | null;
  readonly highG: number | null;
  readonly lowGPerKgBody: number | null;
  readonly highGPerKgBody: number | null;
  readonly lowGPerKgLean: number | null;
  readonly highGPerKgLean: number | null;
  /** Null when no figure is to be shown at all. */
  readonly generalMinimumG: number | null;
  readonly locked: boolean;
  readonly lockReasons: readonly string[];
  /** The figure to stay under in kidney disease; null otherwise. */
  readonly warnAboveG: number | null;
}

const range = (given: ProteinTargetInput, low: number | null, high: number | null) => {
  const per = (grams: number | null, kg: number | undefined) =>
    grams === null || kg === undefined ? null : grams / kg;
  return {
    basis: given.basis,
    lowG: low,
    highG: high,
    lowGPerKgBody: per(low, given.massKg),
    highGPerKgBody: per(high, given.massKg),
    lowGPerKgLean: per(low, given.leanMassKg),
    highGPerKgLean: per(high, given.leanMassKg),
    generalMinimumG: generalMinimumGPerKg * given.massKg,
  };
};

const locked = (
  given: ProteinTargetInput,
  kidney: readonly string[],
  other: readonly string[],
): Outcome<ProteinTarget> => {
  const kidneyOnly = other.length === 0 && !locks(given.dialysis);
  const ceiling = kidneyOnly ? kidneyFigures.ceilingGPerKg * given.massKg : null;
  return answer(
    {
      ...range(given, ceiling, ceiling),
      ...(kidneyOnly ? {} : { generalMinimumG: null }),
      locked: true,
      lockReasons: [...kidney, ...other],
      warnAboveG: kidneyOnly ? kidneyFigures.warnAboveGPerKg * given.massKg : null,
    },
    [...(kidney.length > 0 ? kidneyNotes(given, given.ageYears) : []), ...lockNotes(given, other)],
  );
};

const targetNotes = (given: ProteinTargetInput, lowG: number, index: number | undefined): readonly Note[] => {
  const perKg = lowG / given.massKg;
  const older = given.ageYears > olderThanYears;
  const notes: Note[] = [];
  if (perKg < generalMinimumGPerKg) {
    notes.push({
      code: 'under-general-minimum',
      text: `The low end is ${perKg.toFixed(2)} g per kg body mass, under the general minimum of ${generalMinimumGPerKg} g per kg.`,
    });
  }
  if (older && perKg < bodyBases['body-older'].lowGPerKg) {
    notes.push({
      code: 'under-older-figure',
      text: 'The low end is under every figure seen for adults over 65.',
    });
  }
  if (!older && given.basis.startsWith('body-older')) {
    notes.push({ code: 'outside-source-age', text: 'This basis was made for adults over 65 years.' });
  }
  if (index !== undefined && bodyMassBand(index) === 'obese' && given.basis !== 'lean-common') {
    notes.push({
      code: 'overshoots-in-obesity',
      text: 'Figures per kg body mass overshoot in obesity; compare the lean basis.',
    });
  }
  if (given.basis === 'lean-common') {
    notes.push({
      code: 'common-practice',
      text: 'The lean-mass range is common practice; no source was found.',
    });
  }
  return notes;
};

const basisFor = (
  basis: Exclude<ProteinTargetInput['basis'], 'kidney'>,
  settings: SettingValues,
): ProteinBasis =>
  basis === 'lean-common'
    ? {
        per: 'lean-mass',
        lowGPerKg: settingOf(settings, 'lean-protein-low'),
        highGPerKg: settingOf(settings, 'lean-protein-high'),
      }
    : bodyBases[basis];

export const proteinTarget = (
  given: ProteinTargetInput,
  settings: SettingValues = nutritionDefaults,
): Outcome<ProteinTarget> => {
  if (given.leanMassKg !== undefined && given.leanMassKg >= given.massKg) {
    return refuse('leanMassKg', 'inconsistent', 'Lean mass is less than body mass.');
  }
  const index = given.statureCm === undefined ? undefined : bodyMassIndex(given.massKg, given.statureCm);
  const kidney = [...kidneyLockReasons(given), ...(given.basis === 'kidney' ? ['kidney-basis'] : [])];
  const other = otherLockReasons({ ...given, bodyMassIndex: index });
  if (given.basis === 'kidney' || kidney.length + other.length > 0) return locked(given, kidney, other);
  const basis = basisFor(given.basis, settings);
  let kilograms = given.massKg;
  if (basis.per === 'lean-mass') {
    const full = needed(given, ['leanMassKg'], 'this basis is per kg lean mass');
    if (!full.ok) return full;
    kilograms = full.result.leanMassKg;
  }
  const low = basis.lowGPerKg * kilograms;
  return answer(
    { ...range(given, low, basis.highGPerKg * kilograms), locked: false, lockReasons: [], warnAboveG: null },
    [...targetNotes(given, low, index), ...lockNotes(given, [])],
  );
};

export const proteinTargetRow = calculation({
  id: 'protein-target',
  title: 'Protein a day, on a chosen basis',
  area: 'nutrition',
  input,
  result: [
    { name: 'basis', unit: '' },
    { name: 'lowG', unit: 'g/d', about: 'when locked: the kidney ceiling to discuss, or null' },
    { name: 'highG', unit: 'g/d', about: 'when locked: the kidney ceiling to discuss, or null' },
    { name: 'lowGPerKgBody', unit: 'g/kg/d' },
    { name: 'highGPerKgBody', unit: 'g/kg/d' },
    { name: 'lowGPerKgLean', unit: 'g/kg/d' },
    { name: 'highGPerKgLean', unit: 'g/kg/d' },
    { name: 'generalMinimumG', unit: 'g/d' },
    { name: 'locked', unit: '' },
    { name: 'lockReasons', unit: '' },
    { name: 'warnAboveG', unit: 'g/d' },
  ],
  citations: [...basisCitations, ...lockCitations],
  calculate: (given) => proteinTarget(given),
  example: { massKg: 70, leanMassKg: 49, ageYears: 58, basis: 'lean-common' },
});
