/** Reviewing a patient: the record on one time axis, decisions answered, baselines set, messages written. */
import { z } from 'zod';
import type { DecisionWord } from '#core/decision/answers.ts';
import { isOfWarningSign } from '#core/decision/decisions-in-force.ts';
import { whatWouldChange } from '#core/decision/what-would-change.ts';
import { openSigns, type Plan } from '#core/plan/plan.ts';
import { baselineFields, responseConsistent, responseFields } from '#core/record/staff-fields.ts';
import { addDays } from '#core/time/day.ts';
import { onWholeRecord } from '#data/decision/decide-queries.ts';
import { respond, responsesOf } from '#data/decision/decision-responses.ts';
import type { Decision } from '#data/decision/decisions.ts';
import { evaluateRecord } from '#data/decision/evaluate.ts';
import { decisionById } from '#data/decision/replayable-decisions.ts';
import { confirmEntry } from '#data/entries/confirm-entry.ts';
import { sendMessage } from '#data/messages/messages.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { Problem } from '../errors.ts';
import { requireFresh } from '../fresh-sign-in.ts';
import { checked } from '../inputs/checked.ts';
import { madeId, nothing } from '../outputs.ts';
import { recordProcedure, router } from '../trpc.ts';
import { enter, firstEntry } from './corrections/enter.ts';
import { certificateProcedure } from './review/certificate.ts';
import { earlierDosesProcedure } from './review/earlier-doses.ts';
import { reviewOf, reviewWanted } from './review/review-of.ts';
import { summaryProcedure } from './review/summary.ts';

/** Why a decision cannot be overruled now; null where it can. */
const refusedOverride = (plan: Plan, decision: Decision, instead: DecisionWord | null): string | null => {
  if (isOfWarningSign(decision))
    return 'A warning sign is not overruled. Record the contact with the patient, then resume exercise by exercise.';
  return openSigns(plan).length > 0 && instead !== 'pause'
    ? 'A warning sign is open. Until a contact has reached the patient nothing but a pause can be chosen.'
    : null;
};

export const reviewRouter = router({
  get: recordProcedure
    .input(reviewWanted)
    .query(({ ctx: { access, patient }, input }) =>
      onWholeRecord(
        access,
        patient.id,
        () => reviewOf(access, patient, input),
        addDays(access.day, -input.days),
      ),
    ),

  /** How the dose in force was answered, the last step, and what is open: facts, and a sentence of each. */
  summary: summaryProcedure,

  earlierDoses: earlierDosesProcedure,

  /**
   * Which single answers would have changed one decision: worked out for the one that is asked about, and null where
   * this release does not come to its answers again. No patient's procedure tells it.
   */
  whatWouldChange: recordProcedure
    .input(z.object({ decisionId: z.string().max(64) }))
    .query(async ({ ctx, input }) => {
      const decision = await decisionById(ctx.access, ctx.patient.id, input.decisionId);
      if (!decision) throw new Problem('not-found', 'This patient has no such decision.');
      const { largestStep, today, contact } = decision;
      const answers = { decision: decision.decision, largestStep, today, contact };
      return { answers, others: whatWouldChange({ ...decision, answers }) };
    }),

  certificate: certificateProcedure,

  /**
   * Answers a decision. `seen` is the newest answer the page showed: when a colleague has answered
   * meanwhile, nothing is written and the second is told. An override is followed by the doses it leaves.
   */
  respond: recordProcedure
    .input(z.object({ response: z.unknown(), seen: z.string().max(64).nullable().optional() }))
    .output(madeId)
    .mutation(async ({ ctx, input }) => {
      const { access, patient } = ctx;
      const row = checked(responseFields, input.response, (value) => responseConsistent(value, access.day));
      const decision = await decisionById(access, patient.id, row.decisionId);
      if (!decision) throw new Problem('not-found', 'This patient has no such decision.');
      if (row.kind === 'override') {
        const refused = refusedOverride(await planOf(access, patient), decision, row.decision);
        if (refused) throw new Problem('refused', refused);
        if (decision.decision === 'pause') requireFresh(ctx.person);
      }
      const response = row.kind === 'accept' ? { ...row, decision: null, until: null } : row;
      return access.store.write(async () => {
        const newest = (await responsesOf(access, patient.id)).find(
          (one) => one.decisionId === row.decisionId,
        );
        if (input.seen !== undefined && (newest?.id ?? null) !== input.seen) {
          throw new Problem(
            'conflict',
            `${newest?.answeredName ?? 'A colleague'} answered this decision in the meantime. Your answer was not saved; reload the page.`,
          );
        }
        const id = await respond(access, patient.id, response);
        if (row.kind === 'override') {
          await evaluateRecord(access, patient.id, { cause: 'clinician', sessionId: null, morningId: null });
        }
        return id;
      });
    }),

  /** `seen` is how many baselines the page showed; one a colleague set meanwhile is not overwritten. */
  setBaseline: recordProcedure
    .input(z.object({ baseline: z.unknown(), seen: z.number().int().min(0).optional() }))
    .output(madeId)
    .mutation(({ ctx, input }) => {
      const { access, patient } = ctx;
      const { joint } = checked(baselineFields, input.baseline);
      return access.store.write(async () => {
        const baselineValues = (await baselinesOf(access, patient.id)).filter((row) => row.joint === joint);
        if (input.seen !== undefined && baselineValues.length !== input.seen)
          throw new Problem(
            'conflict',
            `${baselineValues.at(-1)?.setBy ?? 'A colleague'} set a baseline for this joint in the meantime. Your baseline was not saved; reload the page.`,
          );
        const id = await enter.baseline(firstEntry(ctx), input.baseline);
        await evaluateRecord(access, patient.id, { cause: 'clinician', sessionId: null, morningId: null });
        return id;
      });
    }),

  confirmEntry: recordProcedure
    .input(z.object({ kind: z.enum(['session', 'morning']), id: z.string().max(64) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const isConfirmed = await confirmEntry(ctx.access, ctx.patient.id, input.kind, input.id);
      if (!isConfirmed)
        throw new Problem('conflict', 'This entry’s time is not in doubt, or it belongs to another patient.');
    }),

  write: recordProcedure
    .input(z.object({ text: z.string().trim().min(1).max(2000) }))
    .output(madeId)
    .mutation(({ ctx, input }) => sendMessage(ctx.access, ctx.patient.id, input.text)),
});
