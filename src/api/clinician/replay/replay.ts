/** Looking back under other settings: of one person at once, of everybody on a thread that tells how far it is. */
import { z } from 'zod';
import { engineSettings, engineSettingValues } from '#core/decision/settings.ts';
import { isBeyondDecisions } from '#core/decision/what-if/what-if-fields.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { mostWeeks, usualWeeks, whatIfOf } from '#data/replay/what-if.ts';
import { progressOf, stopJob } from '#data/replay/what-if-jobs.ts';
import { Problem } from '../../errors.ts';
import { movedFrom } from '../../inputs/what-if.ts';
import { nothing } from '../../outputs.ts';
import { clinicianProcedure, recordProcedure, router, staffProcedure } from '../../trpc.ts';
import { jobName, whatIfOfEverybody } from './everybody.ts';
import { knownThenProcedure } from './known-then.ts';
import { countsOf, lineOf } from './shown.ts';

const weeks = z.number().int().min(1).max(mostWeeks).default(usualWeeks);

const moved = (value: unknown) => {
  const read = movedFrom(value);
  if ('refusals' in read) throw new Problem('refused', read.refusals.join(' '));
  return read;
};

export const replayRouter = router({
  /** Settings of the rules that a look back can show, as they stand here. */
  settings: clinicianProcedure.query(async ({ ctx }) => {
    const values = engineSettingValues(await settingsOf(ctx.access));
    return engineSettings
      .filter(({ id }) => !isBeyondDecisions(id))
      .map((setting) => ({ ...setting, value: values[setting.id] }));
  }),

  ofPatient: recordProcedure.input(z.object({ moved: z.unknown(), weeks })).query(async ({ ctx, input }) => {
    const asked = { moved: moved(input.moved), weeks: input.weeks };
    const found = await whatIfOf(ctx.access, ctx.patient.id, asked);
    return {
      ...countsOf(found),
      patients: found.days.length > 0 ? 1 : 0,
      lines: found.days.map((one) => lineOf(one, ctx.patient.id, '')),
    };
  }),

  /** As it was known at a past instant; nothing that came later is in it. */
  knownThen: knownThenProcedure,

  everybody: clinicianProcedure
    .input(z.object({ moved: z.unknown(), weeks, job: jobName }))
    .mutation(({ ctx, input }) => whatIfOfEverybody(ctx, moved(input.moved), input.weeks, input.job)),

  /** Null once it has ended. */
  progress: staffProcedure
    .input(z.object({ job: jobName }))
    .query(({ ctx, input }) => progressOf(ctx.access, input.job)),

  stop: staffProcedure
    .input(z.object({ job: jobName }))
    .output(nothing)
    .mutation(({ ctx, input }) => stopJob(ctx.access, input.job)),
});
