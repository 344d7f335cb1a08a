/** The catalogue's ladders for one person and one home, as the dose rules ask for them. */
import type { Anthropometry } from '../catalogue/exercise.ts';
import type { Ladder, LadderStep } from '../engine/dose/proposal.ts';
import { type NeighbouringRung, nextRung, previousRung } from '../variation/ladder.ts';
import { hasEquipmentFor } from './equipment.ts';

interface Home {
  readonly equipment: readonly string[];
  readonly loadsKg: readonly number[];
}

const stepOf = (found: NeighbouringRung | null, home: Home): LadderStep | null =>
  found && {
    exerciseId: found.rung.exerciseId,
    effectiveLoadKg: found.rung.effectiveLoadKg,
    stepPercent: found.stepPercent,
    equipmentOwned: hasEquipmentFor(found.rung.exerciseId, home),
  };

/** Without body mass, stature and coefficients no neighbour is known, and nothing steps. */
export const ladderAtHome = (person: Anthropometry | null, home: Home): Ladder => ({
  harder: (exerciseId) => (person ? stepOf(nextRung(exerciseId, person), home) : null),
  easier: (exerciseId) => (person ? stepOf(previousRung(exerciseId, person), home) : null),
});
