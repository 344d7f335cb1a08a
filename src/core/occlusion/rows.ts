/** The registry rows of occlusion work. */
import type { AnyCalculation } from '../calculation.ts';
import { elasticWrapLength } from './elastic-wrap.ts';
import { narrowCuffEstimate } from './narrow-cuff-estimate.ts';
import { occlusionLoad, occlusionLoadStep } from './occlusion-load.ts';
import { occlusionTarget } from './occlusion-target.ts';
import { passiveOcclusion } from './passive-occlusion.ts';
import { occlusionPointsA } from './points-a.ts';
import { occlusionPointsB } from './points-b.ts';
import { limbOcclusionPressureEstimate } from './pressure-estimate.ts';
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
