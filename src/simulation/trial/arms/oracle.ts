/**
 * Sees the joint as it is and takes, each time, the dose that gives the muscle most of those the joint takes
 * without answering; of equal ones the one of least volume. No clinic can do this: it says what
 * could be reached. It looks at the session in hand alone, and so is near the best course and not proven to be it.
 */
import { repetitionsAsked } from '#core/decision/dose/volume.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { Arm, TrueJoint } from '../arm.ts';
import { ownedLoadsKg, startDose, startEasier } from '../start.ts';
import { tally } from './tally.ts';

const fewestRepetitions = 5;
const nothing = (): void => undefined;

const volumeOf = (dose: LowLoadDose): number => repetitionsAsked(dose) * dose.loadKg;

/** What the engine's own steps may reach: every load at home, the signed band, a set more. Least volume first. */
const choices: readonly LowLoadDose[] = ownedLoadsKg
  .flatMap((loadKg) =>
    [startDose.sets, engineDefaults['most-sets']].flatMap((sets) =>
      Array.from({ length: startDose.repetitions.high - fewestRepetitions + 1 }, (_, more) => {
        const low = fewestRepetitions + more;
        return { ...startDose, sets, loadKg, repetitions: { low, high: startDose.repetitions.high } };
      }),
    ),
  )
  .sort((a, b) => volumeOf(a) - volumeOf(b) || a.loadKg - b.loadKg);

const nearlyAll = 1e-9;

export const bestTolerated = ({ outlook }: TrueJoint): LowLoadDose => {
  let best = choices[0]!;
  let reached = outlook(best);
  for (const dose of choices) {
    const found = outlook(dose);
    const isEasier = found.overload < reached.overload - nearlyAll;
    const isAsEasy = found.overload <= reached.overload + nearlyAll;
    if (isEasier || (isAsEasy && found.stimulus > reached.stimulus + nearlyAll)) {
      best = dose;
      reached = found;
    }
  }
  return best;
};

export const oracle: Arm = {
  id: 'oracle',
  title: 'Sees the true joint',
  treat: () => {
    const { take } = tally();
    let dose = startDose;
    return {
      morning: nothing,
      look: nothing,
      planned: nothing,
      work: (_day, _painBefore, joint) => {
        dose = bestTolerated(joint);
        const easier = { ...dose, sets: startEasier.sets };
        return { kind: 'full', prescriptionId: 'line-1', dose, easier };
      },
      session: nothing,
      dose: () => dose,
      acts: take,
    };
  },
};
