/**
 * Every calculation of the product, in one list. The pages, the tests and the calculation desk
 * read this and nothing else; a calculation that is not here does not exist for them.
 */
import { outcomeRows } from '../assessment/rows.ts';
import { strengthRows } from '../assessment/strength/rows.ts';
import { engineRows } from '../decision/rows.ts';
import { variationRows } from '../exercises/statics/rows.ts';
import { nutritionRows } from '../nutrition/rows.ts';
import { occlusionRows } from '../prescribing/occlusion/rows.ts';
import { screeningRows } from '../screening/rows.ts';
import { seriesRows } from '../statistics/rows.ts';
import type { AnyCalculation } from './calculation.ts';

export const registry: readonly AnyCalculation[] = [
  ...strengthRows,
  ...variationRows,
  ...occlusionRows,
  ...screeningRows,
  ...nutritionRows,
  ...outcomeRows,
  ...seriesRows,
  ...engineRows,
];

const byId: ReadonlyMap<string, AnyCalculation> = new Map(registry.map((row) => [row.id, row]));

export const calculationById = (id: string): AnyCalculation | undefined => byId.get(id);
