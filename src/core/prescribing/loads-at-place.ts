/**
 * The loads that exist where a dose is done: those at home, or those of one machine of the clinic. A dose is
 * rounded to them, steps along them and is lowered to them. A machine that is gone, or is none for the exercise,
 * has no loads.
 */
import { type ClinicMachine, machineLoadsKg } from '../clinic/machine.ts';
import { exerciseById } from '../exercises/catalogue.ts';
import { milligrams } from '../units/units.ts';
import type { Dose } from './dose.ts';
import { machineOf } from './place-of-dose.ts';

export interface LoadsByPlace {
  /** Loads the patient owns, kg. */
  readonly ownedLoadsKg: readonly number[];
  /** Machines of the clinic, retired ones among them; left out = none. */
  readonly machines?: readonly ClinicMachine[];
}

const machineWith = ({ machines = [] }: LoadsByPlace, id: string): ClinicMachine | undefined =>
  machines.find((machine) => machine.id === id);

export const loadsFor = (loads: LoadsByPlace, dose: Dose): readonly number[] => {
  const place = machineOf(dose);
  if (!place) return loads.ownedLoadsKg;
  const machine = machineWith(loads, place.id);
  const isFor = machine?.kind === exerciseById(dose.exerciseId)?.machine;
  return machine && isFor && !machine.isRetired ? machineLoadsKg(machine) : [];
};

/** Why a signed dose cannot be done on its machine any more; null where it can, and at home. */
export const goneFromMachine = (loads: LoadsByPlace, dose: Dose): 'retired' | 'no-such-load' | null => {
  const place = machineOf(dose);
  if (!place || dose.method !== 'low-load') return null;
  const found = loadsFor(loads, dose);
  if (found.length === 0) return 'retired';
  return found.some((kg) => milligrams(kg) === milligrams(dose.loadKg)) ? null : 'no-such-load';
};
