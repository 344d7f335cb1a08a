/** The machines of the clinic beside a dose: which may be chosen, what loads stand on it, and what is gone of it. */
import { apartKg, type ClinicMachine, machineLoadsKg } from '#core/clinic/machine.ts';
import { exerciseById } from '#core/exercises/catalogue.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { goneFromMachine } from '#core/prescribing/loads-at-place.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import type { Typed } from '../../forms/typed.ts';

export const isOnMachine = (exerciseId: string): boolean => exerciseById(exerciseId)?.machine !== undefined;

/** In use, of the kind that the exercise is done on. */
export const machinesFor = (
  machines: readonly ClinicMachine[],
  exerciseId: string,
): readonly ClinicMachine[] => {
  const kind = exerciseById(exerciseId)?.machine;
  return machines.filter((machine) => machine.kind === kind && !machine.isRetired);
};

export const machineChoices = (machines: readonly ClinicMachine[]) =>
  machines.map(({ id, name, place }) => ({ value: id, label: `${name}, ${place}` }));

/** Loads of the place that was chosen: of a machine none until one is; null where the exercise is done at home. */
export const loadsChosen = (
  machines: readonly ClinicMachine[],
  { exerciseId = '', machineId }: Typed,
): readonly number[] | null => {
  if (!isOnMachine(exerciseId)) return null;
  const chosen = machinesFor(machines, exerciseId).find(({ id }) => id === machineId);
  return chosen ? machineLoadsKg(chosen) : [];
};

const loadsInWords = (machine: ClinicMachine): string =>
  say('now.machine', {
    machine: machine.name,
    place: machine.place,
    low: machine.firstKg,
    high: machine.lastKg,
    apart: apartKg(machine),
  });

/** The loads at home, or those of each machine that may be chosen. */
export const loadsThereInWords = (
  machines: readonly ClinicMachine[],
  exerciseId: string,
  ownedKg: readonly number[],
): readonly string[] => {
  if (!isOnMachine(exerciseId))
    return [ownedKg.length > 0 ? say('now.loads', { loads: ownedKg.join(', ') }) : say('now.loads-none')];
  const fitting = machinesFor(machines, exerciseId);
  return fitting.length > 0 ? fitting.map(loadsInWords) : [say('now.machine-none')];
};

/** Why a dose in force cannot be done as it is signed; nothing where it can. */
export const goneInWords = (machines: readonly ClinicMachine[], dose: Dose): readonly string[] => {
  const gone = goneFromMachine({ ownedLoadsKg: [], machines }, dose);
  return gone === null ? [] : [say(gone === 'retired' ? 'now.machine-gone' : 'now.machine-no-load')];
};
