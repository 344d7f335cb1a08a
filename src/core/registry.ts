/**
 * Every calculation of the product, in one list. The pages, the tests and the calculation desk
 * read this and nothing else; a calculation that is not here does not exist for them.
 */
import type { AnyCalculation } from './calculation.ts';
import { engineRows } from './engine/rows.ts';
import { nutritionRows } from './nutrition/rows.ts';
import { occlusionRows } from './occlusion/rows.ts';
import { outcomeRows } from './outcomes/rows.ts';
import { screeningRows } from './screening/rows.ts';
import { seriesRows } from './series/rows.ts';
import { strengthRows } from './strength/rows.ts';
import { variationRows } from './variation/rows.ts';

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
