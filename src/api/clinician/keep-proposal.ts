/** A proposal kept as an unsigned version; it is computed again here, never taken from the page. */
import type { Dose } from '#core/prescribing/dose.ts';
import type { Access } from '#data/access.ts';
import type { Patient } from '#data/patients/people.ts';
import { addVersion } from '#data/prescribing/prescribing.ts';
import { prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { Problem } from '../errors.ts';
import { propose, requireLikely } from './propose.ts';

/** Nothing is kept or signed that is not what was read: what it is worked out from may have changed meanwhile. */
const requireAsShown = (dose: Dose, shown: unknown): void => {
  if (shown !== undefined && JSON.stringify(shown) !== JSON.stringify(dose))
    throw new Problem(
      'conflict',
      'The dose is another one than was shown: a measurement, a limit or a load at home changed meanwhile. Nothing was saved. Propose it again.',
    );
};

export const keepProposal = async (
  access: Access,
  patient: Patient,
  wanted: {
    readonly request: unknown;
    /** The line it becomes a version of. */
    readonly itemId?: string | undefined;
    readonly confirmed: boolean;
    /** The dose as it was shown; left out where nobody read one. */
    readonly shown?: unknown;
  },
): Promise<string> => {
  const { request, itemId } = wanted;
  const proposed = await propose(access, patient, request);
  requireAsShown(proposed.dose, wanted.shown);
  await requireLikely(access, patient, request, wanted.confirmed);
  const known = await prescriptionsOf(access, patient.id);
  if (itemId && !known.some((row) => row.itemId === itemId))
    throw new Problem('not-found', 'This patient has no such prescribed exercise.');
  const working = [...proposed.working, ...proposed.notes].map(({ text }) => text);
  return addVersion(access, patient.id, { ...proposed, working, itemId, origin: 'clinician' });
};
