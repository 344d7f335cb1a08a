/** Protein and energy of one person: worked out from the record, and shown to the patient by signature alone. */
import { z } from 'zod';
import { adviceFields, adviceQuestions, adviceRefusals } from '#core/nutrition/picture/nutrition-advice.ts';
import { adviceStepsOf, nutritionOnRecord, recordAdvice } from '#data/assessment/nutrition.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { nothing } from '../outputs.ts';
import { recordProcedure, router } from '../trpc.ts';

export const nutritionRouter = router({
  get: recordProcedure.query(async ({ ctx }) => ({
    ...(await nutritionOnRecord(ctx.access, ctx.patient)),
    steps: await adviceStepsOf(ctx.access, ctx.patient.id),
  })),

  show: recordProcedure
    .input(z.object({ advice: z.unknown(), confirmed: z.boolean().default(false) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const { facts, picture } = await nutritionOnRecord(ctx.access, ctx.patient);
      const { restAnsweredNo: _, ...advice } = checked(adviceFields, input.advice, (row) =>
        adviceRefusals(row, picture),
      );
      const questions = adviceQuestions(advice, facts.massKg, picture);
      if (questions.length > 0 && !input.confirmed)
        throw new Problem('not-confirmed', questions.join(' '), { questions });
      await recordAdvice(ctx.access, ctx.patient.id, advice);
    }),

  takeBack: recordProcedure
    .output(nothing)
    .mutation(({ ctx }) => recordAdvice(ctx.access, ctx.patient.id, null)),
});
