/** What was measured over the course of care, and the goals set with the patient. */
import { z } from 'zod';
import { Problem } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { retestConsistent, retestFields, retestStopFields } from '#core/assessment/retest-plan.ts';
import { goalsFrom } from '#core/episode/goals.ts';
import { remeasurePlan } from '#core/prescribing/occlusion/pressure/remeasure-plan.ts';
import { goalStepsOf } from '#data/assessment/goals.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { planRetest, retestsOf, stoppedRetestsOf, stopRetest } from '#data/assessment/retest-plans.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { protocolsOf } from '#data/episode/protocols.ts';
import { effusionsOf } from '#data/patients/effusions.ts';
import { madeId, nothing } from '../../outputs.ts';
import { enter, firstEntry } from '../corrections/enter.ts';
import { doseDaysOf } from './dose-days.ts';

export const outcomesRouter = router({
  get: recordProcedure.query(async ({ ctx }) => {
    const { access, patient } = ctx;
    const episode = (await episodesOf(access, patient.id)).at(-1);
    return {
      measurements: await measurementsOf(access, patient.id),
      effusions: await effusionsOf(access, patient.id),
      stoppedRetests: await stoppedRetestsOf(access, patient.id),
      /** As protocols name them: the side that was operated on or injured. */
      operations: (await protocolsOf(access, patient.id)).map(({ joint, procedure, on }) => ({
        joint,
        procedure,
        on,
      })),
      goals: goalsFrom(episode?.goals ?? [], await goalStepsOf(access, patient.id), access.day),
    };
  }),

  /** Days on which doses were signed: read where they are drawn. */
  doseDays: recordProcedure.query(({ ctx: { access, patient } }) => doseDaysOf(access, patient.id)),

  /** What is to be measured again and when; those stopped or done once are left out. */
  retests: recordProcedure.query(({ ctx: { access, patient } }) => retestsOf(access, patient.id)),

  /** When each measured cuff pressure is to be measured again. */
  cuffPressures: recordProcedure.query(async ({ ctx: { access, patient } }) =>
    remeasurePlan(await measurementsOf(access, patient.id), access.day, await settingsOf(access)),
  ),

  /** Plans a measure to be taken again; what was planned of it before is replaced. */
  planRetest: recordProcedure
    .input(z.object({ retest: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx: { access, patient }, input }) =>
      planRetest(
        access,
        patient.id,
        checked(retestFields, input.retest, (row) => retestConsistent(row, access.day)),
      ),
    ),

  stopRetest: recordProcedure
    .input(z.object({ measure: z.string().min(1).max(64), stop: z.unknown() }))
    .output(nothing)
    .mutation(async ({ ctx: { access, patient }, input }) => {
      const { reason } = checked(retestStopFields, input.stop);
      if (!(await stopRetest(access, patient.id, input.measure, reason)))
        throw new Problem('not-found', 'No re-test of this is planned, or no longer. Reload the page.');
    }),

  /** Sets a goal, or says how it stands. */
  setGoal: recordProcedure
    .input(z.object({ goal: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) => enter.goal(firstEntry(ctx), input.goal)),
});
