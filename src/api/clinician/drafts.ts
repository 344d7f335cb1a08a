/** Unfinished work on a form, kept on the server for the person who began it. */
import { z } from 'zod';
import { firstVisitSteps } from '#core/episode/first-visit/first-visit-steps.ts';
import { draftOf, dropDraft, saveDraft } from '#data/patients/drafts.ts';
import { nothing } from '../outputs.ts';
import { recordProcedure, router } from '../trpc.ts';

/** A step of a first visit is a form of its own: saving one leaves what is typed in the others. */
const visitForms = firstVisitSteps.map((step) => `first-visit-${step}` as const);
const form = z.enum([...visitForms, 'pre-visit', 'handover', 'prescribe', 'visit-note', 'group-hour']);

export const draftsRouter = router({
  get: recordProcedure
    .input(z.object({ form }))
    .query(({ ctx, input }) => draftOf(ctx.access, ctx.patient.id, input.form)),

  save: recordProcedure
    .input(z.object({ form, typed: z.record(z.string().max(160), z.string().max(4000)) }))
    .output(nothing)
    .mutation(({ ctx, input }) => saveDraft(ctx.access, ctx.patient.id, input.form, input.typed)),

  drop: recordProcedure
    .input(z.object({ form }))
    .output(nothing)
    .mutation(({ ctx, input }) => dropDraft(ctx.access, ctx.patient.id, input.form)),
});
