/** Looking back under other settings: of one person at once, of everybody on a thread that tells how far it is. */
import { z } from 'zod';
import { engineSettings, engineSettingValues } from '#core/decision/settings.ts';
import { daysIn } from '#core/decision/what-if/what-if.ts';
import { isBeyondDecisions } from '#core/decision/what-if/what-if-fields.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { mostWeeks, usualWeeks, whatIfOf } from '#data/replay/what-if.ts';
import { progressOf, stopJob } from '#data/replay/what-if-jobs.ts';
import { Problem } from '../../errors.ts';
import { movedFrom } from '../../inputs/what-if.ts';
import { clinicianProcedure, recordProcedure, router, staffProcedure } from '../../trpc.ts';
import { jobName, whatIfOfEverybody } from './everybody.ts';

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
    const { days, byWeek, ...found } = await whatIfOf(ctx.access, ctx.patient.id, asked);
    const bolder = daysIn(found.bolder);
    const moreCautious = daysIn(found.moreCautious);
    return {
      ...{ since: found.since, looked: found.looked, other: found.other, weeks: byWeek },
      ...{ bolder, moreCautious, differing: bolder + moreCautious + found.other },
      ...{ bolderTo: found.bolder, moreCautiousTo: found.moreCautious },
      patients: days.length > 0 ? 1 : 0,
      lines: days.map(({ joint, day, before, after, rules }) => ({
        ...{ patientId: ctx.patient.id, name: '', joint, day, rules },
        ...{ before: before.decision, after: after.decision },
      })),
    };
  }),

  everybody: clinicianProcedure
    .input(z.object({ moved: z.unknown(), weeks, job: jobName }))
    .mutation(({ ctx, input }) => whatIfOfEverybody(ctx, moved(input.moved), input.weeks, input.job)),

  /** Null once it has ended. */
  progress: staffProcedure
    .input(z.object({ job: jobName }))
    .query(({ ctx, input }) => progressOf(ctx.access, input.job)),

  stop: staffProcedure
    .input(z.object({ job: jobName }))
    .mutation(({ ctx, input }) => stopJob(ctx.access, input.job)),
});
