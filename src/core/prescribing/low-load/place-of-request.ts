/** Where a dose that is asked for would be done, and the loads that exist there. A place comes before a load. */
import { type ClinicMachine, machineLoadsKg } from '#core/clinic/machine.ts';
import { exerciseById } from '#core/exercises/catalogue.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import type { DoseMachine } from '../dose.ts';
import type { LowLoadRequest } from '../dose-request.ts';
import type { LoadsByPlace } from '../loads-at-place.ts';

export interface RequestedPlace {
  /** null = at home. */
  readonly machine: DoseMachine | null;
  readonly loadsKg: readonly number[];
  readonly notes: readonly Note[];
}

const clinicOnly: Note = {
  code: 'at-the-clinic',
  text: 'Done at the clinic only: the phone does not offer it as a session at home. An exercise for home is chosen and signed apart.',
};

const otherMachine: Note = {
  code: 'test-of-which-machine',
  text: 'The clinic has, or had, another machine of this kind. A test does not say on which one it was done, and kilograms of two machines do not compare: use a test done on this one.',
};

const atHome = (loadsKg: readonly number[]): Outcome<RequestedPlace> =>
  loadsKg.length === 0
    ? refuse('exerciseId', 'missing', 'Enter the loads the patient owns first; the dose is rounded to them.')
    : answer({ machine: null, loadsKg, notes: [] });

const onMachine = (machine: ClinicMachine, ofKind: readonly ClinicMachine[]): RequestedPlace => ({
  machine: { id: machine.id, name: machine.name },
  loadsKg: machineLoadsKg(machine),
  notes: [clinicOnly, ...(ofKind.length > 1 ? [otherMachine] : [])],
});

export const placeOfRequest = (
  { ownedLoadsKg, machines = [] }: LoadsByPlace,
  { exerciseId, machineId }: Pick<LowLoadRequest, 'exerciseId' | 'machineId'>,
): Outcome<RequestedPlace> => {
  const kind = exerciseById(exerciseId)?.machine;
  if (!kind) {
    return machineId === undefined
      ? atHome(ownedLoadsKg)
      : refuse(
          'machineId',
          'inconsistent',
          'This exercise is done without a machine: leave the machine out.',
        );
  }
  const ofKind = machines.filter((machine) => machine.kind === kind);
  const inUse = ofKind.filter(({ isRetired }) => !isRetired);
  if (inUse.length === 0)
    return refuse(
      'exerciseId',
      'missing',
      'No machine for this exercise stands on the clinic’s list. An administrator adds it under Machines.',
    );
  const found = inUse.find(({ id }) => id === machineId);
  if (found) return answer(onMachine(found, ofKind));
  if (machineId !== undefined)
    return refuse('machineId', 'not-listed', 'This machine is no longer in use here. Choose another one.');
  return inUse.length === 1
    ? answer(onMachine(inUse[0]!, ofKind))
    : refuse('machineId', 'missing', `Choose the machine: ${inUse.map(({ name }) => name).join(', ')}.`);
};
