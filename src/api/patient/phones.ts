/** The patient's own phones, and ending one that was lost. */
import { z } from 'zod';
import { endPhone, phonesOf } from '#data/accounts/phones.ts';
import { refusalText } from '#messages/refusals.ts';
import { Problem } from '../errors.ts';
import { patientProcedure, router, withFreshSignIn } from '../trpc.ts';

export type { Phone as OwnPhone } from '#data/accounts/phones.ts';

/** Ended now, or by somebody before; both leave it ended. */
export type EndedPhone = 'ended' | 'ended-before';

export const ownPhonesRouter = router({
  list: patientProcedure.query(({ ctx }) => phonesOf(ctx.access, ctx.patient.id)),

  end: patientProcedure
    .meta({ roles: ['patient'], guard: 'own record, fresh sign-in' })
    .use(withFreshSignIn)
    .input(z.object({ phoneId: z.string().min(1).max(64) }))
    .mutation(async ({ ctx, input }): Promise<{ readonly ended: EndedPhone }> => {
      const ended = await endPhone(ctx.access, ctx.patient.id, input.phoneId, 'patient');
      if (ended === 'unknown') throw new Problem('not-found', refusalText('phone-not-found'));
      return { ended };
    }),
});
