/** What a clinic sets for the care around a dose: the words of its consents, and who covers. */
import { z } from 'zod';
import { consentKinds } from '#core/episode/consent.ts';
import {
  cliniciansOf,
  coveringClinicianOf,
  nameCoveringClinician,
} from '#data/clinic/covering-clinicians.ts';
import { writeWording } from '#data/episode/consents.ts';
import { wordingsForStaff } from '../consent-wordings.ts';
import { Problem } from '../errors.ts';
import { nothing } from '../outputs.ts';
import { administratorProcedure, freshAdministrator, router } from '../trpc.ts';

export const adminCareRouter = router({
  wordings: administratorProcedure.query(({ ctx }) => wordingsForStaff(ctx.access)),

  writeWording: freshAdministrator
    .input(z.object({ kind: z.enum(consentKinds), text: z.string().trim().min(20).max(4000) }))
    .output(z.number())
    .mutation(({ ctx, input }) => writeWording(ctx.access, input.kind, input.text)),

  coveringClinician: administratorProcedure.query(async ({ ctx }) => ({
    coveringClinician: await coveringClinicianOf(ctx.access),
    clinicians: await cliniciansOf(ctx.access),
  })),

  nameCoveringClinician: freshAdministrator
    .input(z.object({ userId: z.string().max(64).nullable() }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const named = await nameCoveringClinician(ctx.access, input.userId);
      if (!named) throw new Problem('not-found', 'There is no such clinician in your clinic.');
    }),
});
