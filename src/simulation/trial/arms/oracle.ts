/**
 * Sees the joint as it is and takes, each time, the dose that gives the muscle most of those the joint takes
 * without answering; of equal ones the one of least volume. No clinic can do this: it says what
 * could be reached. It looks at the session in hand alone, and so is near the best course and not proven to be it.
 * Others like it allow the joint some answer and take the best dose within that: the line between strength and
 * bad days along which no clinic is expected to do better.
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

/** `allowed`: points of pain a session may add. Where none stays within it, the one that goes least beyond. */
export const bestTolerated = ({ outlook }: TrueJoint, allowed = 0): LowLoadDose => {
  const beyond = (dose: LowLoadDose) => {
    const { stimulus, overload } = outlook(dose);
    return { stimulus, overload: Math.max(0, overload - allowed) };
  };
  let best = choices[0]!;
  let reached = beyond(best);
  for (const dose of choices) {
    const found = beyond(dose);
    const isEasier = found.overload < reached.overload - nearlyAll;
    const isAsEasy = found.overload <= reached.overload + nearlyAll;
    if (isEasier || (isAsEasy && found.stimulus > reached.stimulus + nearlyAll)) {
      best = dose;
      reached = found;
    }
  }
  return best;
};

const oracleAllowing = (id: string, title: string, allowed: number): Arm => ({
  id,
  title,
  treat: () => {
    const { take } = tally();
    let dose = startDose;
    return {
      morning: nothing,
      look: nothing,
      planned: nothing,
      work: (_day, _painBefore, joint) => {
        dose = bestTolerated(joint, allowed);
        const easier = { ...dose, sets: startEasier.sets };
        return { kind: 'full', prescriptionId: 'line-1', dose, easier };
      },
      session: nothing,
      dose: () => dose,
      acts: take,
    };
  },
});

export const oracle = oracleAllowing('oracle', 'Sees the true joint', 0);

/** The oracle, and those that allow the joint this much answer to a session. */
export const frontier: readonly Arm[] = [
  oracle,
  ...[0.25, 0.5, 1].map((points) =>
    oracleAllowing(`oracle-${points}`, `Sees the true joint, lets it add ${points}`, points),
  ),
];
