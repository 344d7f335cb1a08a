/** Two records of one person: merged, undone, and whose plan stays. */
import { z } from 'zod';
import type { Access } from '#data/access.ts';
import { mayOpen } from '#data/patients/care-team.ts';
import { choosePlan, mergeRecords, undoMerge } from '#data/patients/merge-records.ts';
import { mergesOf } from '#data/patients/merges.ts';
import { patientOf } from '#data/patients/people.ts';
import { Problem } from '../../errors.ts';
import { nothing } from '../../outputs.ts';
import { recordProcedure, router } from '../../trpc.ts';

const id = z.string().min(1).max(64);
const reason = z.string().trim().min(1).max(300);

const refusedMerge = {
  'same-record': 'That is this record itself. Choose the other one.',
  'other-merged': 'That record is merged into another one already. Undo that first.',
  'shown-merged': 'This record is merged into another one. Open that one and merge there.',
  'other-shown': 'Another record is merged into that one. Merge this record into that one instead.',
} as const;

/** The other record is opened by the same rules as this one. */
const requireOther = async (access: Access, otherId: string): Promise<void> => {
  if (!(await patientOf(access, otherId)))
    throw new Problem('not-found', 'There is no such patient in your clinic.');
  if (!(await mayOpen(access, otherId)))
    throw new Problem('care-team', 'Only the care team of the other record can merge it.');
};

export const mergesRouter = router({
  get: recordProcedure.query(({ ctx }) => mergesOf(ctx.access, ctx.patient.id)),

  /** This record stays the one shown. */
  merge: recordProcedure
    .input(z.object({ otherId: id, reason }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      await requireOther(ctx.access, input.otherId);
      const merged = await mergeRecords(ctx.access, ctx.patient.id, input.otherId, input.reason);
      if (merged !== 'merged') throw new Problem('conflict', refusedMerge[merged]);
    }),

  undo: recordProcedure
    .input(z.object({ otherId: id, reason }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      await requireOther(ctx.access, input.otherId);
      if (!(await undoMerge(ctx.access, ctx.patient.id, input.otherId, input.reason)))
        throw new Problem('conflict', 'That record is not merged into this one.');
    }),

  choosePlan: recordProcedure.input(z.object({ keptId: id, reason })).mutation(async ({ ctx, input }) => {
    await requireOther(ctx.access, input.keptId);
    const chosen = await choosePlan(ctx.access, ctx.patient.id, input.keptId, input.reason);
    if (!chosen) throw new Problem('conflict', 'That is no record of this person, or nothing is merged.');
    return chosen;
  }),
});
