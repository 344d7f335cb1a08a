/** What a person does of a dose, and what the joint counts of it. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { conduct, muscle as figures, tissue } from './figures.ts';
import type { Muscle, SessionWork } from './muscle.ts';

export type Extra = 'none' | 'repetitions' | 'set';

export const workOf = (dose: LowLoadDose, muscle: Muscle, extra: Extra): SessionWork => {
  const able = muscle.repetitionsToFailure(dose.loadKg);
  const wanted = Math.round(
    dose.repetitions.high * (extra === 'repetitions' ? 1 + conduct.extraRepetitions : 1),
  );
  // Whoever does more than was said does not keep the reserve either.
  const kept = extra === 'none' ? dose.reserve : 0;
  const sets = dose.sets + (extra === 'set' ? 1 : 0);
  return {
    loadKg: dose.loadKg,
    sets: Array.from({ length: sets }, (_, set) =>
      Math.max(0, Math.min(wanted, Math.floor(able * (1 - figures.setFatigue * set) - kept))),
    ),
  };
};

/** Multiple of the first session as it was signed. */
export const loadOf = ({ loadKg, sets }: SessionWork, first: LowLoadDose): number =>
  (sets.reduce((sum, repetitions) => sum + repetitions, 0) / (first.sets * first.repetitions.high)) *
  (loadKg / first.loadKg) ** tissue.loadPower;
