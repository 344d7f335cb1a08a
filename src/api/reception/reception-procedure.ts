/** Who keeps the front desk, and on whom: names, numbers and appointments, and nothing of a record. */
import { noteRead } from '#data/audit/audit.ts';
import { Problem } from '../errors.ts';
import { ofPatientId, requirePatient } from '../patient-of-clinic.ts';
import { requireShown } from '../read-only-when-merged.ts';
import { settled } from '../trpc.ts';

export const receptionProcedure = settled
  .meta({ roles: ['reception'], guard: 'own clinic, names and appointments' })
  .use(({ ctx, next }) => {
    if (ctx.person.role !== 'reception')
      throw new Problem('not-yours', 'This page is for the clinic’s reception.');
    return next({ ctx });
  });

/** Reception on one patient; of the patient no more goes on than who it is. */
export const receptionPatientProcedure = receptionProcedure
  .meta({ roles: ['reception'], guard: 'patient of own clinic, name and appointment' })
  .input(ofPatientId)
  .use(async ({ ctx, input, path, type, next }) => {
    const { id, givenName, familyName } = await requirePatient(ctx.access, input.patientId, path);
    if (type === 'query') noteRead(ctx.access, { subject: path, patientId: id });
    else await requireShown(ctx.access, id, path);
    return next({ ctx: { ...ctx, patient: { id, givenName, familyName } } });
  });
