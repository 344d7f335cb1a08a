/** A dose moved by hand in its load alone: the wanted load, and the nearest one at home. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { PlannedWork } from '../arm.ts';
import { ownedLoadsKg, startDose, startEasier } from '../start.ts';

const nearestOwned = (wantedKg: number): number =>
  ownedLoadsKg.reduce((best, kg) => (Math.abs(kg - wantedKg) < Math.abs(best - wantedKg) ? kg : best));

export interface ByLoad {
  readonly dose: () => LowLoadDose;
  readonly planned: () => PlannedWork;
  readonly change: (factor: number) => void;
}

export const byLoad = (): ByLoad => {
  let wantedKg = startDose.loadKg;
  const at = (dose: LowLoadDose): LowLoadDose => ({ ...dose, loadKg: nearestOwned(wantedKg) });
  return {
    dose: () => at(startDose),
    planned: () => ({ kind: 'full', prescriptionId: 'line-1', dose: at(startDose), easier: at(startEasier) }),
    change: (factor) => {
      wantedKg *= factor;
    },
  };
};
