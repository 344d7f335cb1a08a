/** Questionnaires the clinic wrote itself, or is allowed to use. */
import { z } from 'zod';
import {
  questionnaireConsistent,
  questionnaireFields,
} from '#core/assessment/questionnaires/questionnaire.ts';
import {
  questionnairesOf,
  retireQuestionnaire,
  writeQuestionnaire,
} from '#data/assessment/questionnaires.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { nothing } from '../outputs.ts';
import { administratorProcedure, freshAdministrator, router } from '../trpc.ts';

const id = z.string().min(1).max(64);

const notThere = () =>
  new Problem('not-found', 'Your clinic has no such questionnaire, or it is retired. Reload the page.');

export const questionnairesRouter = router({
  list: administratorProcedure.query(({ ctx }) => questionnairesOf(ctx.access)),

  /** A new questionnaire, or the next version of one. */
  write: freshAdministrator
    .input(z.object({ questionnaireId: id.nullable(), questionnaire: z.unknown() }))
    .mutation(async ({ ctx, input }) => {
      const { title, questions } = checked(questionnaireFields, input.questionnaire, questionnaireConsistent);
      const written = await writeQuestionnaire(ctx.access, input.questionnaireId, { title, questions });
      if (!written) throw notThere();
      return written;
    }),

  retire: freshAdministrator
    .input(z.object({ questionnaireId: id }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      if (!(await retireQuestionnaire(ctx.access, input.questionnaireId))) throw notThere();
    }),
});
