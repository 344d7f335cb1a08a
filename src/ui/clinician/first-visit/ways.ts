/** Exercises a first dose can be proposed for, as the list of them shows each. */
import { hasEquipmentFor } from '#core/exercises/equipment.ts';
import type { WorkedSide } from '#core/exercises/exercise.ts';
import type { Method } from '#core/prescribing/methods.ts';
import type { Choice, Patient } from '../answers.ts';

export interface VisitWay {
  readonly exerciseId: string;
  readonly trade: string;
  readonly plain: string;
  readonly method: Method;
  readonly side: WorkedSide;
}

/** What can be proposed now, or once what is missing is measured here; of that, what can be done with what is at home. */
export const waysOf = (
  choices: readonly Choice[],
  profile: Patient['profile'],
): { readonly ways: readonly VisitWay[]; readonly notAtHome: number } => {
  const all = choices.flatMap(({ exerciseId, trade, plain, possible, notPossible }) =>
    [...possible, ...notPossible.filter(({ isMissing }) => isMissing)].map(({ method, side }) => ({
      exerciseId,
      trade,
      plain,
      method,
      side,
    })),
  );
  const { ownedEquipment: equipment = [], ownedLoadsKg: loadsKg = [] } = profile ?? {};
  if (equipment.length === 0) return { ways: all, notAtHome: 0 };
  const ways = all.filter(({ exerciseId }) => hasEquipmentFor(exerciseId, { equipment, loadsKg }));
  const isLeft = (id: string) => ways.some(({ exerciseId }) => exerciseId === id);
  const missing = new Set(all.map(({ exerciseId }) => exerciseId).filter((id) => !isLeft(id)));
  return { ways, notAtHome: missing.size };
};
