/**
 * Lean mass of an adult by one named formula, or from measured body fat.
 *
 * The formulas differ by more than 5 kg for the same person, so the formula is always kept with the
 * figure. A result outside what the formulas can know is refused rather than shown: body-mass index
 * outside the clinic's bounds, lean mass not under body mass, or an unbelievably small share of it.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import type { Field, InputOf } from '#core/calculations/describe.ts';
import { needed } from '#core/calculations/needed-inputs.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { ageYears, massKg, type Sex, sex, statureCm } from '../body-fields.ts';
import { bodyMassIndex } from '../body-mass-index.ts';
import { nutritionDefaults, settingOf } from '../settings.ts';
import { boer } from './boer.ts';
import type { LeanMassFormula } from './formula.ts';
import { fromBodyFatCitation, leanMassFromBodyFatKg } from './from-body-fat.ts';
import { hume } from './hume.ts';
import { james, jamesTurningPointKg } from './james.ts';
import { janmahasatian } from './janmahasatian.ts';

export const leanMassFormulas: readonly LeanMassFormula[] = [boer, james, hume, janmahasatian];

const input = [
  { name: 'formula', kind: 'enum', values: ['boer', 'james', 'hume', 'janmahasatian', 'body-fat'] },
  { ...sex, optional: true },
  massKg,
  { ...statureCm, optional: true },
  { name: 'bodyFatPercent', kind: 'number', unit: '%', min: 2, max: 75, optional: true },
  { ...ageYears, optional: true },
] as const satisfies readonly Field[];
export type LeanMassInput = InputOf<typeof input>;

export interface LeanMass {
  readonly leanMassKg: number;
  readonly formula: string;
  readonly shareOfBodyMass: number;
}

const believed = (
  lean: number,
  mass: number,
  formula: string,
  settings: SettingValues,
  notes: readonly Note[],
): Outcome<LeanMass> => {
  const least = settingOf(settings, 'lean-mass-share-min');
  if (lean >= mass) {
    return refuse(
      'massKg',
      'outside-validity',
      'The formula gives no less lean mass than body mass; use measured body fat.',
    );
  }
  if (lean <= least * mass) {
    return refuse(
      'massKg',
      'outside-validity',
      `The formula gives ${least} of body mass or less as lean; check the entries.`,
    );
  }
  return answer({ leanMassKg: lean, formula, shareOfBodyMass: lean / mass }, notes);
};

/** A body-mass index the formulas were not made for, as a refusal; null when it is inside the clinic's bounds. */
const bodyMassIndexRefusal = (mass: number, stature: number, settings: SettingValues) => {
  const index = bodyMassIndex(mass, stature);
  const low = settingOf(settings, 'lean-mass-bmi-min');
  const high = settingOf(settings, 'lean-mass-bmi-max');
  if (index >= low && index <= high) return null;
  return refuse(
    'massKg',
    'outside-validity',
    `Lean-mass formulas are used at a body-mass index of ${low} to ${high}; check mass and stature or use measured body fat.`,
  );
};

const jamesNotes = (person: Sex, mass: number, stature: number): readonly Note[] =>
  mass > jamesTurningPointKg(person, stature)
    ? [
        {
          code: 'past-turning-point',
          text: 'At this mass the James formula falls as mass rises; choose another formula.',
        },
      ]
    : [];

export const leanMass = (
  given: LeanMassInput,
  settings: SettingValues = nutritionDefaults,
): Outcome<LeanMass> => {
  if (given.formula === 'body-fat') {
    const full = needed(given, ['bodyFatPercent'], 'this formula takes measured body fat');
    if (!full.ok) return full;
    const lean = leanMassFromBodyFatKg(given.massKg, full.result.bodyFatPercent);
    return believed(lean, given.massKg, given.formula, settings, []);
  }
  const full = needed(given, ['sex', 'statureCm'], 'this formula takes it');
  if (!full.ok) return full;
  const person = full.result;
  const outside = bodyMassIndexRefusal(person.massKg, person.statureCm, settings);
  if (outside) return outside;
  const formula = leanMassFormulas.find((row) => row.id === given.formula) ?? boer;
  const lean = formula.kilograms(person.sex, person.massKg, person.statureCm);
  const notes = formula === james ? jamesNotes(person.sex, person.massKg, person.statureCm) : [];
  return believed(lean, person.massKg, given.formula, settings, notes);
};

export const leanMassRow = calculation({
  id: 'lean-mass',
  title: 'Lean mass by a named formula',
  area: 'nutrition',
  input,
  result: units({ leanMassKg: 'kg', formula: '', shareOfBodyMass: '1' }),
  citations: [
    ...leanMassFormulas.map((formula) => formula.citation),
    {
      source: 'nyman-2016',
      locator: 'turning point of James, about 43 and 37',
      mark: 'second-hand',
      remark: 'The derivative gives 43.0 for men and 36.1 for women; the women’s figure differs.',
    },
    fromBodyFatCitation,
  ],
  calculate: (given) => leanMass(given),
  example: { formula: 'boer', sex: 'female', massKg: 70, statureCm: 165 },
});
