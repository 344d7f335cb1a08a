/**
 * An exercise signed for a machine of the clinic rests from the moment its load cannot be set there: nobody sets out
 * for what cannot be done, and nobody beside the machine picks another load. The easier session counts as well,
 * since an answer about pain must always have one to fall to.
 */
import { goneFromMachine, type LoadsByPlace } from '../prescribing/loads-at-place.ts';
import { machineOf } from '../prescribing/place-of-dose.ts';
import type { PrescriptionVersion } from '../record/record.ts';
import type { PlanReason } from './plan.ts';

const codeOf = { retired: 'machine-gone', 'no-such-load': 'machine-load-gone' } as const;

/** null where both can be done, and at home. */
export const machineReason = (
  loads: LoadsByPlace,
  { dose, badDay }: Pick<PrescriptionVersion, 'dose' | 'badDay'>,
): PlanReason | null => {
  const [place, gone] = [
    machineOf(dose) ?? machineOf(badDay),
    goneFromMachine(loads, dose) ?? goneFromMachine(loads, badDay),
  ];
  if (!place || !gone) return null;
  const { version = 0, writtenAt: since = 0 } = loads.machines?.find(({ id }) => id === place.id) ?? {};
  return { code: codeOf[gone], today: 'rest-this-joint', machine: place.name, version, since };
};
