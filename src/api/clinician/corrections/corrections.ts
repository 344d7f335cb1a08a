/**
 * Nothing a clinician enters is beyond correction. An entry is marked as entered in error with a reason,
 * and struck out or replaced through the checks of its own form, in one transaction. What it bounds or
 * stops may become stricter at once; looser only when a clinician has seen the new plan.
 */
import { z } from 'zod';
import { Problem } from '#api/errors.ts';
import { requireFresh } from '#api/fresh-sign-in.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { correctionSubjects, isStruckOutOnly, waitsToBeSeen } from '#core/corrections/correction.ts';
import { correctionsOf, markEnteredInError, recordPlanSeen } from '#data/corrections/corrections.ts';
import { type EnteredRow, enteredOf } from '#data/corrections/entered.ts';
import { evaluateRecord } from '#data/decision/evaluate.ts';
import { enter } from './enter.ts';
import { shownPlan } from './shown-plan.ts';

const byClinician = { cause: 'clinician', sessionId: null, morningId: null } as const;

const subject = z.enum(correctionSubjects);

const kindIn = ({ entered }: EnteredRow): string | null =>
  typeof entered.kind === 'string' ? entered.kind : null;

export const correctionsRouter = router({
  /** Entries of one subject that can be corrected, newest first, those in error among them. */
  entries: recordProcedure.input(z.object({ subject })).query(async ({ ctx, input }) => {
    const corrections = await correctionsOf(ctx.access, ctx.patient.id);
    const rows = await enteredOf(ctx.access, ctx.patient.id, input.subject);
    return rows
      .toSorted((a, b) => b.recordedAt - a.recordedAt)
      .map((row) => {
        const found = corrections.find(({ subjectId }) => subjectId === row.id);
        const { reason, correctedName: by, correctedAt: at, replacedById } = found ?? {};
        return { ...row, enteredInError: found ? { reason, by, at, replacedById } : null };
      });
  }),

  /** What was corrected, newest first: as it was entered, what stands in its place, who, when and why. */
  list: recordProcedure.query(async ({ ctx }) => {
    const rows = await correctionsOf(ctx.access, ctx.patient.id);
    const known = new Map<string, EnteredRow>();
    for (const of of new Set(rows.map((row) => row.subject)))
      for (const row of await enteredOf(ctx.access, ctx.patient.id, of)) known.set(row.id, row);
    return rows.map((row) => ({
      ...row,
      waitsToBeSeen: row.waits && row.seen === null,
      was: known.get(row.subjectId)?.entered ?? null,
      now: row.replacedById === null ? null : (known.get(row.replacedById)?.entered ?? null),
    }));
  }),

  enterInError: recordProcedure
    .input(
      z.object({
        subject,
        subjectId: z.string().min(1).max(64),
        reason: z.string().trim().min(1).max(300),
        /** As the form of the subject takes it; left out, the entry is struck out. */
        replacement: z.unknown().optional(),
        confirmed: z.boolean().default(false),
      }),
    )
    .mutation(({ ctx: { access, patient, person }, input }) =>
      access.store.write(async () => {
        const of = input.subject;
        if (of === 'clearance' && input.replacement !== undefined) requireFresh(person);
        const row = (await enteredOf(access, patient.id, of)).find(({ id }) => id === input.subjectId);
        if (!row) throw new Problem('not-found', 'This patient has no such entry.');
        const before = (await correctionsOf(access, patient.id)).find(
          ({ subjectId }) => subjectId === row.id,
        );
        if (before)
          throw new Problem(
            'conflict',
            `${before.correctedName} already marked this entry as entered in error. Nothing was changed; reload the page.`,
          );
        if (input.replacement !== undefined && isStruckOutOnly(of))
          throw new Problem(
            'refused',
            'What the patient answered at home can be struck out. Only the patient answers anew.',
          );
        const replacedById =
          input.replacement === undefined || isStruckOutOnly(of)
            ? null
            : await enter[of](
                { access, patient, confirmed: input.confirmed, instead: row },
                input.replacement,
              );
        const waits = waitsToBeSeen(of, kindIn(row));
        const id = await markEnteredInError(access, patient.id, {
          subject: of,
          row,
          reason: input.reason,
          replacedById,
          waits,
        });
        await evaluateRecord(access, patient.id, byClinician);
        return {
          correctionId: id,
          replacedById,
          waitsToBeSeen: waits,
          plan: await shownPlan(access, patient),
          planOnceSeen: waits ? await shownPlan({ ...access, asSeen: id }, patient) : null,
        };
      }),
    ),

  /** The plan as it would be without the entries whose correction waits, to be looked at before it is agreed to. */
  planOnceSeen: recordProcedure
    .input(z.object({ correctionId: z.string().min(1).max(64) }))
    .query(({ ctx: { access, patient }, input }) =>
      shownPlan({ ...access, asSeen: input.correctionId }, patient),
    ),

  /** A clinician has seen the new plan: from now on only what stands as corrected counts. */
  acknowledgePlan: recordProcedure
    .input(z.object({ correctionId: z.string().min(1).max(64) }))
    .mutation(({ ctx: { access, patient }, input }) =>
      access.store.write(async () => {
        const found = (await correctionsOf(access, patient.id)).find(({ id }) => id === input.correctionId);
        if (!found) throw new Problem('not-found', 'This patient has no such correction.');
        if (!found.waits || found.seen)
          throw new Problem('conflict', 'The plan after this correction does not wait to be seen.');
        await recordPlanSeen(access, patient.id, found.id);
        await evaluateRecord(access, patient.id, byClinician);
        return { plan: await shownPlan(access, patient) };
      }),
    ),
});
