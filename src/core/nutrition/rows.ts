/** Every nutrition calculation, in the order a clinician meets them. */
import type { AnyCalculation } from '../calculations/calculation.ts';
import { bodyMassIndexRow } from './body-mass-index.ts';
import { creatinineConversionRow } from './creatinine-conversion.ts';
import { egfrRow } from './egfr.ts';
import { energyAvailabilityRow } from './energy-availability.ts';
import { energySurplusRow } from './energy-surplus.ts';
import { espenUndernutritionRow } from './espen-undernutrition.ts';
import { glimPhenotypeRow } from './glim-phenotype.ts';
import { kidneyLockRow } from './kidney-lock.ts';
import { leanMassRow } from './lean-mass/lean-mass.ts';
import { leanMassRangeRow } from './lean-mass/lean-mass-range.ts';
import { nutritionLockRow } from './nutrition-lock.ts';
import { proteinPerMealRow } from './protein-per-meal.ts';
import { proteinPlateauRow } from './protein-plateau.ts';
import { proteinTargetRow } from './protein-target.ts';
import { restingEnergyRow } from './resting-energy/resting-energy.ts';
import { totalEnergyRow } from './total-energy.ts';
import { weightChangeRow } from './weight-change.ts';

export const nutritionRows: readonly AnyCalculation[] = [
  bodyMassIndexRow,
  weightChangeRow,
  glimPhenotypeRow,
  espenUndernutritionRow,
  nutritionLockRow,
  creatinineConversionRow,
  egfrRow,
  kidneyLockRow,
  leanMassRow,
  leanMassRangeRow,
  proteinTargetRow,
  proteinPerMealRow,
  proteinPlateauRow,
  restingEnergyRow,
  totalEnergyRow,
  energySurplusRow,
  energyAvailabilityRow,
];
