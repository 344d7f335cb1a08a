/** The clinic's machines as a clinician prescribes on them, retired ones among them. */
import { machinesOf } from '#data/clinic/machines.ts';
import { clinicianProcedure, router } from '../../trpc.ts';

export const clinicMachinesRouter = router({
  list: clinicianProcedure.query(({ ctx }) => machinesOf(ctx.access)),
});
