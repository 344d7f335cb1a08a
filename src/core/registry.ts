/**
 * Every calculation of the product, in one list. The pages, the tests and the calculation desk
 * read this and nothing else; a calculation that is not here does not exist for them.
 */
import type { AnyCalculation } from './calculation.ts';

export const registry: readonly AnyCalculation[] = [];

const byId: ReadonlyMap<string, AnyCalculation> = new Map(registry.map((row) => [row.id, row]));

export const calculationById = (id: string): AnyCalculation | undefined => byId.get(id);
