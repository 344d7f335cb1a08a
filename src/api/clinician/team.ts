/** The care team of a patient, and opening a record from outside it. */
import { z } from 'zod';
import { colleaguesOf } from '#data/accounts/staff.ts';
import { sitesOf } from '#data/clinic/sites.ts';
import {
  emergencyAccessesForMe,
  emergencyAccessesOf,
  openWithReason,
  setTeamMember,
  teamOf,
} from '#data/patients/care-team.ts';
import { setSite, siteOf } from '#data/patients/patient-sites.ts';
import { Problem } from '../errors.ts';
import { nothing } from '../outputs.ts';
import { clinicianProcedure, nameProcedure, recordProcedure, router } from '../trpc.ts';

export const teamRouter = router({
  get: recordProcedure.query(async ({ ctx }) => ({
    members: await teamOf(ctx.access, ctx.patient.id),
    colleagues: await colleaguesOf(ctx.access),
    emergencyAccesses: await emergencyAccessesOf(ctx.access, ctx.patient.id),
    siteId: await siteOf(ctx.access, ctx.patient.id),
    sites: (await sitesOf(ctx.access)).filter((site) => site.closedAt === null),
  })),

  setSite: recordProcedure
    .input(z.object({ siteId: z.string().max(64) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const isKnown = await setSite(ctx.access, ctx.patient.id, input.siteId);
      if (!isKnown) throw new Problem('not-found', 'There is no such site in your clinic.');
    }),

  set: recordProcedure
    .input(z.object({ userId: z.string().min(1).max(64), belongs: z.boolean() }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const isKnown = await setTeamMember(ctx.access, ctx.patient.id, input.userId, input.belongs);
      if (!isKnown) throw new Problem('not-found', 'There is no such clinician in your clinic.');
    }),

  /** Opens a record kept to a team the caller is not in, for some hours. The team is told. */
  open: nameProcedure
    .input(z.object({ reason: z.string().trim().min(10).max(300) }))
    .output(z.number())
    .mutation(({ ctx, input }) => openWithReason(ctx.access, ctx.patient.id, input.reason)),

  emergencyAccesses: clinicianProcedure.query(({ ctx }) => emergencyAccessesForMe(ctx.access)),
});
