/** Limits on a joint, things that happened, and steps approved ahead. What changes the facts is evaluated at once. */
import { z } from 'zod';
import { Problem } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { isRest } from '#core/decision/left-of-today.ts';
import { preApprovalFields } from '#core/episode/care-fields.ts';
import type { PlanReason } from '#core/plan/plan.ts';
import { programmeSettings } from '#core/prescribing/programme/settings.ts';
import type { Access } from '#data/access.ts';
import { settingValue } from '#data/clinic/clinic-settings.ts';
import { evaluateRecord } from '#data/decision/evaluate.ts';
import { eventsOf } from '#data/episode/care-events.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import {
  liftLimit,
  limitsOf,
  preApprovalsOf,
  signPreApproval,
  withdrawPreApproval,
} from '#data/episode/limits-and-pre-approvals.ts';
import type { Patient } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { madeId, nothing } from '../../outputs.ts';
import { enter, firstEntry } from '../corrections/enter.ts';
import { requireSigning } from '../require-signing.ts';

const byClinician = { cause: 'clinician', sessionId: null, morningId: null } as const;

/** What a day or its pain takes away comes back by itself; all else stops an exercise until somebody acts. */
const passing: ReadonlySet<PlanReason['code']> = new Set([
  'decision',
  'news-today',
  'gap-easier',
  'gap-ring-first',
  'injection-easier',
]);

/** Nobody signs more of what is stopped. */
const requireDone = async (access: Access, patient: Patient, itemId: string): Promise<void> => {
  const { items } = await planOf(access, patient);
  const reasons = items.find((item) => item.itemId === itemId)?.reasons ?? [];
  if (reasons.some(({ code, today }) => isRest(today) && !passing.has(code)))
    throw new Problem(
      'refused',
      'This exercise is stopped now, so no step of it is approved ahead. Look at what stops it under Plan first.',
    );
};

export const careRouter = router({
  list: recordProcedure.query(async ({ ctx }) => ({
    limits: await limitsOf(ctx.access, ctx.patient.id),
    events: await eventsOf(ctx.access, ctx.patient.id),
    /** null = no episode of care was opened. */
    episodeBeganOn: (await episodesOf(ctx.access, ctx.patient.id)).at(-1)?.changes[0]?.on ?? null,
    injectionEasierDays: await settingValue(ctx.access, programmeSettings, 'injection-easier-days'),
    preApprovals: await preApprovalsOf(ctx.access, ctx.patient.id),
  })),

  addLimit: recordProcedure
    .input(z.object({ limit: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) => {
      return ctx.access.store.write(async () => {
        const id = await enter.limit(firstEntry(ctx), input.limit);
        await evaluateRecord(ctx.access, ctx.patient.id, byClinician);
        return id;
      });
    }),

  liftLimit: recordProcedure
    .input(z.object({ limitId: z.string().max(64), reason: z.string().trim().min(1).max(300) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const lifted = await liftLimit(ctx.access, ctx.patient.id, input.limitId, input.reason);
      if (!lifted) throw new Problem('conflict', 'It was already lifted, or belongs to another patient.');
    }),

  addEvent: recordProcedure
    .input(z.object({ event: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) => {
      return ctx.access.store.write(async () => {
        const id = await enter.event(firstEntry(ctx), input.event);
        await evaluateRecord(ctx.access, ctx.patient.id, byClinician);
        return id;
      });
    }),

  preApprove: recordProcedure
    .input(z.object({ preApproval: z.unknown() }))
    .output(madeId)
    .mutation(async ({ ctx, input }) => {
      const { itemId, steps, days } = checked(preApprovalFields, input.preApproval);
      await requireSigning(ctx.access, ctx.patient.id);
      const current = inForce(await prescriptionsOf(ctx.access, ctx.patient.id));
      if (!current.some((row) => row.itemId === itemId)) {
        throw new Problem('refused', 'You can approve steps ahead only for an exercise in force.');
      }
      await requireDone(ctx.access, ctx.patient, itemId);
      return signPreApproval(ctx.access, ctx.patient.id, itemId, steps, days);
    }),

  withdrawPreApproval: recordProcedure
    .input(z.object({ preApprovalId: z.string().max(64) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const withdrawn = await withdrawPreApproval(ctx.access, ctx.patient.id, input.preApprovalId);
      if (!withdrawn)
        throw new Problem('conflict', 'It was already withdrawn, or belongs to another patient.');
    }),
});
