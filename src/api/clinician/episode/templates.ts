/** Starting points for a prescription. */
import { prescriptionTemplates } from '#core/prescribing/templates.ts';
import { clinicianProcedure, router } from '../../trpc.ts';

export const templatesRouter = router({
  list: clinicianProcedure.query(() => prescriptionTemplates),
});
