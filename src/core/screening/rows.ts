/** The registry rows of screening. */
import type { AnyCalculation } from '../calculations/calculation.ts';
import { ankleBrachialIndex } from './ankle-brachial-index.ts';
import { bloodPressureCategory } from './blood-pressure-category.ts';
import { bloodPressureThreshold } from './blood-pressure-threshold.ts';
import { wellsDvt } from './wells-dvt.ts';

export const screeningRows: readonly AnyCalculation[] = [
  bloodPressureCategory,
  bloodPressureThreshold,
  ankleBrachialIndex,
  wellsDvt,
];
