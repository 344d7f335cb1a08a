/** Who opened the patient's record, for the patient. */
import { accessLog } from '#data/audit/access-log.ts';
import { patientProcedure, router } from '../trpc.ts';

export const accessRouter = router({
  list: patientProcedure.query(async ({ ctx }) => ({
    day: ctx.access.day,
    lines: await accessLog(ctx.access, ctx.patient.id, ctx.access.actorId),
  })),
});
