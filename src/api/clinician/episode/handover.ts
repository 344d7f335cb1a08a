/** One page for the colleague who takes over, and who looks after a pause until when. */
import { z } from 'zod';
import { Problem, refusedWith } from '#api/errors.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import type { Refusal } from '#core/outcome.ts';
import { type Day, daysBetween, isDay } from '#core/time/day.ts';
import { sentenceOf } from '#core/worklist/sentences.ts';
import { cliniciansOf, ownPause } from '#data/clinic/covering-clinicians.ts';
import { decisionById } from '#data/decision/replayable-decisions.ts';
import { handoverFor } from '#data/episode/handover.ts';
import { madeId } from '../../outputs.ts';

/** Longest a pause may be looked after before somebody has to say so again; a choice of this project. */
const longestOwnedDays = 14;

const untilRefusals = (until: Day, today: Day): readonly Refusal[] => {
  const ahead = isDay(until) ? daysBetween(today, until) : -1;
  return ahead < 0 || ahead > longestOwnedDays
    ? [
        {
          field: 'input.until',
          code: 'outside-validity',
          reason: `Enter a day from today to ${longestOwnedDays} days ahead.`,
        },
      ]
    : [];
};

export const handoverRouter = router({
  get: recordProcedure.query(async ({ ctx }) => {
    const { dangers, ...handover } = await handoverFor(ctx.access, ctx.patient);
    return {
      ...handover,
      dangers: dangers.map((row) => ({
        key: row.key,
        kind: row.kind,
        sentence: sentenceOf({ kind: row.kind, joint: row.joint as never, facts: row.facts }, ctx.access.day),
        since: row.since,
        showsFrom: row.showsFrom,
        acknowledgedBy: row.acknowledgedBy,
        assignedName: row.assignedName,
      })),
    };
  }),

  colleagues: recordProcedure.query(({ ctx }) => cliniciansOf(ctx.access)),

  /** Without an owner the caller takes it on. */
  ownPause: recordProcedure
    .input(
      z.object({
        decisionId: z.string().min(1).max(64),
        until: z.string().max(10),
        ownerId: z.string().max(64).nullable().default(null),
        remark: z.string().trim().max(300).nullable().default(null),
      }),
    )
    .output(madeId)
    .mutation(async ({ ctx, input }) => {
      const refused = untilRefusals(input.until, ctx.access.day);
      if (refused.length > 0) throw refusedWith(refused);
      const decision = await decisionById(ctx.access, ctx.patient.id, input.decisionId);
      if (decision?.decision !== 'pause') throw new Problem('not-found', 'This patient has no such pause.');
      const { actorId: id, actorName: name } = ctx.access;
      const owner =
        input.ownerId === null
          ? { id, name }
          : (await cliniciansOf(ctx.access)).find((one) => one.id === input.ownerId);
      if (!owner) throw new Problem('not-found', 'There is no such clinician in your clinic.');
      const { decisionId, until, remark } = input;
      return ownPause(ctx.access, ctx.patient.id, { decisionId, until, remark, owner });
    }),
});
