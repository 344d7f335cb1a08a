/**
 * All that can be said of protein and energy from one record, for a clinician: what is missing, what closes
 * it, and each figure beside those it disagrees with. It gives no diet and takes none; a clinician decides.
 */
import type { Note } from '#core/outcome.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { bodyMassIndex } from '../body-mass-index.ts';
import { energySurplus } from '../energy-surplus.ts';
import { kidneyLockReasons } from '../kidney-lock.ts';
import { type LockQuestion, lockQuestions } from '../lock-fields.ts';
import { lockNotes, otherLockReasons } from '../nutrition-lock.ts';
import { olderThanYears } from '../protein-bases.ts';
import { proteinAtMeal } from '../protein-per-meal.ts';
import { type ProteinTarget, type ProteinTargetInput, proteinTarget } from '../protein-target.ts';
import { restingEnergy } from '../resting-energy/resting-energy.ts';
import { type Activity, activityFactors, totalEnergyKcal } from '../total-energy.ts';
import { type LeanMasses, leanMasses } from './lean-masses.ts';
import type { NutritionFacts } from './nutrition-facts.ts';

interface ProteinLine {
  readonly basis: ProteinTargetInput['basis'];
  readonly lowG: number;
  readonly highG: number;
  readonly notes: readonly Note[];
}

interface Energy {
  readonly restingKcal: number;
  readonly byActivity: readonly { readonly activity: Activity; readonly kcal: number }[];
  /** The clinic's range, added to what is needed; 0 to 0 where body mass already loads the joint. */
  readonly surplusLowKcal: number;
  readonly surplusHighKcal: number;
  /** Of the published ranges at light activity. */
  readonly published: readonly {
    readonly source: string;
    readonly lowKcal: number;
    readonly highKcal: number;
  }[];
  readonly notes: readonly Note[];
}

/** Of kidney disease alone: the figures for the talk with the treating physician. */
interface KidneyFigures {
  readonly ceilingG: number;
  readonly warnAboveG: number;
}

export interface NutritionPicture {
  readonly missing: readonly ('massKg' | 'statureCm' | 'formulaSex')[];
  readonly bodyMassIndex: number | null;
  /** Not empty: no target is given. */
  readonly lockReasons: readonly string[];
  readonly notAsked: readonly LockQuestion[];
  readonly lockNotes: readonly Note[];
  readonly leanMass: LeanMasses;
  /** Empty when locked, or where body mass is not known. */
  readonly protein: readonly ProteinLine[];
  readonly meal: { readonly lowG: number; readonly highG: number } | null;
  readonly energy: Energy | null;
  readonly kidney: KidneyFigures | null;
}

const basesFor = (ageYears: number): readonly ProteinTargetInput['basis'][] =>
  ageYears > olderThanYears
    ? ['lean-common', 'body-older', 'body-older-unwell', 'body-isn-sports']
    : ['lean-common', 'body-isn-sports'];

/** By lean mass the range is that of all formulas: its low end by the lowest, its high end by the highest. */
const proteinLines = (
  facts: NutritionFacts,
  lean: LeanMasses,
  settings: SettingValues,
): readonly ProteinLine[] => {
  const { massKg, statureCm, ageYears, answers } = facts;
  if (massKg === null) return [];
  const of = (basis: ProteinTargetInput['basis'], leanMassKg: number | null) =>
    proteinTarget(
      {
        ...answers,
        basis,
        massKg,
        ageYears,
        ...(statureCm === null ? {} : { statureCm }),
        ...(leanMassKg === null ? {} : { leanMassKg }),
      },
      settings,
    );
  return basesFor(ageYears).flatMap((basis): readonly ProteinLine[] => {
    const [low, high] = [of(basis, lean.lowKg), of(basis, lean.highKg)];
    if (!low.ok || !high.ok) return [];
    const [lowG, highG] = [low.result.lowG, high.result.highG];
    return lowG === null || highG === null ? [] : [{ basis, lowG, highG, notes: low.notes }];
  });
};

const energyOf = (facts: NutritionFacts, settings: SettingValues): Energy | null => {
  const { massKg, statureCm, formulaSex: sex, ageYears, answers } = facts;
  if (massKg === null || statureCm === null || sex === null) return null;
  const resting = restingEnergy({ formula: 'mifflin', massKg, statureCm, sex, ageYears });
  if (!resting.ok) return null;
  const { kcalPerDay: restingKcal } = resting.result;
  const activities = Object.keys(activityFactors) as readonly Activity[];
  const surplus = energySurplus(
    {
      ...answers,
      massKg,
      statureCm,
      maintenanceKcalPerDay: totalEnergyKcal(restingKcal, 'light'),
      // Everybody here has a joint that is followed.
      jointDisease: true,
    },
    settings,
  );
  if (!surplus.ok || surplus.result.lowKcal === null || surplus.result.highKcal === null) return null;
  return {
    restingKcal,
    byActivity: activities.map((activity) => ({ activity, kcal: totalEnergyKcal(restingKcal, activity) })),
    surplusLowKcal: surplus.result.lowKcal,
    surplusHighKcal: surplus.result.highKcal,
    published: surplus.result.published,
    notes: [...resting.notes, ...surplus.notes],
  };
};

const kidneyFiguresOf = (
  { massKg, ageYears, answers }: NutritionFacts,
  otherReasons: readonly string[],
  settings: SettingValues,
): KidneyFigures | null => {
  if (massKg === null || otherReasons.length > 0) return null;
  const target = proteinTarget({ ...answers, basis: 'kidney', massKg, ageYears }, settings);
  if (!target.ok) return null;
  const { highG, warnAboveG }: ProteinTarget = target.result;
  return highG === null || warnAboveG === null ? null : { ceilingG: highG, warnAboveG };
};

export const nutritionPicture = (facts: NutritionFacts, settings: SettingValues): NutritionPicture => {
  const { massKg, statureCm, formulaSex, ageYears, answers } = facts;
  const index = massKg === null || statureCm === null ? null : bodyMassIndex(massKg, statureCm);
  const kidney = kidneyLockReasons(answers);
  const other = otherLockReasons({
    ...answers,
    ageYears,
    ...(index === null ? {} : { bodyMassIndex: index }),
  });
  const lockReasons = [...kidney, ...other];
  const isLocked = lockReasons.length > 0;
  const lean = leanMasses(facts, settings);
  return {
    missing: [
      ...(massKg === null ? (['massKg'] as const) : []),
      ...(statureCm === null ? (['statureCm'] as const) : []),
      ...(formulaSex === null ? (['formulaSex'] as const) : []),
    ],
    bodyMassIndex: index,
    lockReasons,
    notAsked: lockQuestions.map(({ name }) => name).filter((name) => answers[name] === undefined),
    lockNotes: lockNotes(answers, lockReasons),
    leanMass: lean,
    protein: isLocked ? [] : proteinLines(facts, lean, settings),
    meal: isLocked || massKg === null ? null : proteinAtMeal(massKg),
    energy: isLocked ? null : energyOf(facts, settings),
    kidney: kidney.length > 0 ? kidneyFiguresOf(facts, other, settings) : null,
  };
};
