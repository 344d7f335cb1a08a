/** The catalogue's ladders for one person and one home, as the dose rules ask for them. */

import type { Ladder, LadderStep } from '#core/decision/dose/proposal.ts';
import { hasEquipmentFor } from '../equipment.ts';
import type { Anthropometry, WorkedSide } from '../exercise.ts';
import { addedDemands, sideFor } from './added-demands.ts';
import { type NeighbouringLevel, nextLevel, previousLevel } from './ladder.ts';

interface Home {
  readonly equipment: readonly string[];
  readonly loadsKg: readonly number[];
}

const stepOf = (
  found: NeighbouringLevel | null,
  from: { readonly exerciseId: string; readonly side: WorkedSide },
  home: Home,
): LadderStep | null => {
  if (!found) return null;
  const { exerciseId, effectiveLoadKg } = found.rung;
  const side = sideFor(exerciseId, from.side);
  const added = side && addedDemands(from, { exerciseId, side });
  return {
    exerciseId,
    effectiveLoadKg,
    stepPercent: found.stepPercent,
    equipmentOwned: hasEquipmentFor(exerciseId, home),
    side,
    addsDemand: added !== null && (added.joints.length > 0 || added.cautions.length > 0),
  };
};

/** Without body mass, stature and coefficients no neighbour is known, and nothing steps. */
export const ladderAtHome = (person: Anthropometry | null, home: Home): Ladder => ({
  harder: (exerciseId, side) =>
    person ? stepOf(nextLevel(exerciseId, person), { exerciseId, side }, home) : null,
  easier: (exerciseId, side) =>
    person ? stepOf(previousLevel(exerciseId, person), { exerciseId, side }, home) : null,
});
