/** What was measured over the course of care, and the goals set with the patient. */
import { z } from 'zod';
import { goalsFrom } from '#core/episode/goals.ts';
import { goalStepsOf } from '#data/assessment/goals.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { effusionsOf } from '#data/patients/effusions.ts';
import { recordProcedure, router } from '../trpc.ts';
import { enter, firstEntry } from './corrections/enter.ts';

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

  /** Sets a goal, or says how it stands. */
  setGoal: recordProcedure
    .input(z.object({ goal: z.unknown() }))
    .mutation(({ ctx, input }) => enter.goal(firstEntry(ctx), input.goal)),
});
