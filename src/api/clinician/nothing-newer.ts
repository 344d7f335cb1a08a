/** A page stands open while patients write: nothing is signed past a warning sign its reader cannot have seen. */
import { openSigns } from '#core/plan/plan.ts';
import type { Access } from '#data/access.ts';
import type { Patient } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { Problem } from '../errors.ts';

/** `readAt`: instant of the page that was read; left out where the dose is signed as it is made. */
export const requireNothingNewer = async (
  access: Access,
  patient: Patient,
  readAt?: number,
): Promise<void> => {
  if (readAt === undefined) return;
  const newer = openSigns(await planOf(access, patient)).some(({ sign }) => sign.reportedAt > readAt);
  if (newer)
    throw new Problem(
      'conflict',
      'A warning sign came in since this page was read. Nothing was signed. Reload it and look at the sign first.',
    );
};
