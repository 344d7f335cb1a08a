/** Measurements: impossible values are refused, unlikely ones asked about before they are kept. */
import { z } from 'zod';
import { measurementForms } from '#core/assessment/measurements/measurement-fields.ts';
import { assessmentSettings } from '#core/assessment/settings.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { settingValue } from '#data/clinic/clinic-settings.ts';
import { evaluateRecord } from '#data/decision/evaluate.ts';
import { madeId } from '../outputs.ts';
import { recordProcedure, router } from '../trpc.ts';
import { enter, firstEntry } from './corrections/enter.ts';

export const measurementsRouter = router({
  /** Those of somebody else’s questions only where the clinic holds a licence. */
  forms: recordProcedure.query(async ({ ctx: { access } }) => {
    const isLicensed = (await settingValue(access, assessmentSettings, 'knee-hip-score-licence')) === 1;
    return measurementForms.filter(({ needsLicence }) => isLicensed || !needsLicence);
  }),

  list: recordProcedure.query(({ ctx }) => measurementsOf(ctx.access, ctx.patient.id)),

  record: recordProcedure
    .input(z.object({ measurement: z.unknown(), confirmed: z.boolean().default(false) }))
    .output(madeId)
    .mutation(({ ctx, input }) => enter.measurement(firstEntry(ctx, input.confirmed), input.measurement)),

  recordEffusion: recordProcedure
    .input(z.object({ effusion: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) =>
      ctx.access.store.write(async () => {
        const id = await enter['effusion-test'](firstEntry(ctx), input.effusion);
        await evaluateRecord(ctx.access, ctx.patient.id, {
          cause: 'clinician',
          sessionId: null,
          morningId: null,
        });
        return id;
      }),
    ),
});
