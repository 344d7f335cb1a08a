/** Lean mass of one person by every formula that answers, and why the others do not. */
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { type LeanMassInput, leanMass } from '../lean-mass/lean-mass.ts';
import type { NutritionFacts } from './nutrition-facts.ts';

const formulas = [
  'body-fat',
  'boer',
  'james',
  'hume',
  'janmahasatian',
] as const satisfies readonly LeanMassInput['formula'][];
type Formula = (typeof formulas)[number];

export interface LeanMasses {
  readonly byFormula: readonly { readonly formula: Formula; readonly leanMassKg: number }[];
  readonly leftOut: readonly { readonly formula: Formula; readonly reason: string }[];
  /** Over all formulas that answered; null = none did. */
  readonly lowKg: number | null;
  readonly highKg: number | null;
}

export const leanMasses = (facts: NutritionFacts, settings: SettingValues): LeanMasses => {
  const { massKg, statureCm, bodyFatPercent, formulaSex } = facts;
  if (massKg === null) return { byFormula: [], leftOut: [], lowKg: null, highKg: null };
  const asked = formulas.filter((formula) => formula !== 'body-fat' || bodyFatPercent !== null);
  const outcomes = asked.map((formula) => ({
    formula,
    outcome: leanMass(
      {
        formula,
        massKg,
        ...(statureCm === null ? {} : { statureCm }),
        ...(bodyFatPercent === null ? {} : { bodyFatPercent }),
        ...(formulaSex === null ? {} : { sex: formulaSex }),
      },
      settings,
    ),
  }));
  const byFormula = outcomes.flatMap(({ formula, outcome }) =>
    outcome.ok ? [{ formula, leanMassKg: outcome.result.leanMassKg }] : [],
  );
  const kilograms = byFormula.map((row) => row.leanMassKg);
  return {
    byFormula,
    leftOut: outcomes.flatMap(({ formula, outcome }) =>
      outcome.ok ? [] : [{ formula, reason: outcome.refused.map(({ reason }) => reason).join(' ') }],
    ),
    lowKg: kilograms.length === 0 ? null : Math.min(...kilograms),
    highKg: kilograms.length === 0 ? null : Math.max(...kilograms),
  };
};
