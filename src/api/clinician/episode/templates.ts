/** Starting points for a prescription. */

import { clinicianProcedure, router } from '#api/trpc.ts';
import { prescriptionTemplates } from '#core/prescribing/templates.ts';

export const templatesRouter = router({
  list: clinicianProcedure.query(() => prescriptionTemplates),
});
