/** What was measured over the course of care, and the goals set with the patient. */
import { z } from 'zod';
import { recordProcedure, router } from '#api/trpc.ts';
import { goalsFrom } from '#core/episode/goals.ts';
import { goalStepsOf } from '#data/assessment/goals.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { effusionsOf } from '#data/patients/effusions.ts';
import { enter, firstEntry } from '../corrections/enter.ts';
import { doseDaysOf } from './dose-days.ts';

export const outcomesRouter = router({
  get: recordProcedure.query(async ({ ctx }) => {
    const { access, patient } = ctx;
    const episode = (await episodesOf(access, patient.id)).at(-1);
    return {
      measurements: await measurementsOf(access, patient.id),
      effusions: await effusionsOf(access, patient.id),
      goals: goalsFrom(episode?.goals ?? [], await goalStepsOf(access, patient.id), access.day),
    };
  }),

  /** Days on which doses were signed: read where they are drawn. */
  doseDays: recordProcedure.query(({ ctx: { access, patient } }) => doseDaysOf(access, patient.id)),

  /** Sets a goal, or says how it stands. */
  setGoal: recordProcedure
    .input(z.object({ goal: z.unknown() }))
    .mutation(({ ctx, input }) => enter.goal(firstEntry(ctx), input.goal)),
});
