/** The registry rows of occlusion work. */
import type { AnyCalculation } from '#core/calculations/calculation.ts';
import { occlusionPointsA } from '#core/screening/occlusion-points/points-a.ts';
import { occlusionPointsB } from '#core/screening/occlusion-points/points-b.ts';
import { occlusionLoad, occlusionLoadStep } from './occlusion-load.ts';
import { passiveOcclusion } from './passive-occlusion.ts';
import { elasticWrapLength } from './pressure/elastic-wrap.ts';
import { narrowCuffEstimate } from './pressure/narrow-cuff-estimate.ts';
import { occlusionTarget } from './pressure/occlusion-target.ts';
import { limbOcclusionPressureEstimate } from './pressure/pressure-estimate.ts';
import { restrictionTime } from './restriction-time.ts';
import { occlusionSessionTime } from './session-time.ts';

export const occlusionRows: readonly AnyCalculation[] = [
  limbOcclusionPressureEstimate,
  narrowCuffEstimate,
  occlusionTarget,
  restrictionTime,
  occlusionSessionTime,
  passiveOcclusion,
  occlusionLoad,
  occlusionLoadStep,
  elasticWrapLength,
  occlusionPointsA,
  occlusionPointsB,
];
