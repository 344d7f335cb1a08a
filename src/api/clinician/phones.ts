/** Invitations for a patient, and the phones enrolled by them. */
import { z } from 'zod';
import { invitationsOf, invite, withdrawInvitation } from '#data/accounts/invitations.ts';
import { endPhone, phonesOf } from '#data/accounts/phones.ts';
import { Problem } from '../errors.ts';
import { nothing } from '../outputs.ts';
import { recordProcedure, router } from '../trpc.ts';

const id = z.string().min(1).max(64);

export const phonesRouter = router({
  list: recordProcedure.query(async ({ ctx }) => ({
    invitations: await invitationsOf(ctx.access, ctx.patient.id),
    phones: await phonesOf(ctx.access, ctx.patient.id),
  })),

  /** The code is answered once and kept nowhere. */
  invite: recordProcedure.mutation(({ ctx }) => invite(ctx.access, ctx.patient.id)),

  withdraw: recordProcedure
    .input(z.object({ invitationId: id }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const withdrawn = await withdrawInvitation(ctx.access, ctx.patient.id, input.invitationId);
      if (!withdrawn)
        throw new Problem('conflict', 'It has already been used or withdrawn, or it has expired.');
    }),

  endPhone: recordProcedure
    .input(z.object({ phoneId: id }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const ended = await endPhone(ctx.access, ctx.patient.id, input.phoneId, 'clinic');
      if (ended !== 'ended')
        throw new Problem('conflict', 'It was already ended, or belongs to another patient.');
    }),
});
