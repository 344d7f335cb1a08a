/** Measurements: impossible values are refused, unlikely ones asked about before they are kept. */
import { z } from 'zod';
import { isSameSubject } from '#core/assessment/measurements/far-from-last.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measurementConsistent, unlikely } from '#core/assessment/measurements/measurement-checks.ts';
import { measurementForm, measurementForms } from '#core/assessment/measurements/measurement-fields.ts';
import { effusionFields } from '#core/record/staff-fields.ts';
import { measurementsOf, recordEffusion, recordMeasurement } from '#data/assessment/measurements.ts';
import { evaluateRecord } from '#data/decision/evaluate.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { recordProcedure, router } from '../trpc.ts';
import { requireHandsOnTest } from './episode/hands-on-test.ts';

const kindOf = (value: unknown): string =>
  typeof value === 'object' && value !== null && 'kind' in value ? String(value.kind) : '';

export const measurementsRouter = router({
  forms: recordProcedure.query(() => measurementForms),

  list: recordProcedure.query(({ ctx }) => measurementsOf(ctx.access, ctx.patient.id)),

  record: recordProcedure
    .input(z.object({ measurement: z.unknown(), confirmed: z.boolean().default(false) }))
    .mutation(async ({ ctx, input }) => {
      const form = measurementForm(kindOf(input.measurement));
      if (!form) throw new Problem('refused', 'Choose what was measured from the list.');
      const row = checked(form.fields, input.measurement, (value) =>
        measurementConsistent(value as unknown as Measurement, ctx.access.day),
      ) as unknown as Measurement;
      await requireHandsOnTest(ctx.access, ctx.patient.id, row.kind);
      const earlier = await measurementsOf(ctx.access, ctx.patient.id);
      const last = earlier.findLast((known) => isSameSubject(row, known));
      const questions = unlikely(row, last ?? null);
      if (questions.length > 0 && !input.confirmed) {
        throw new Problem('not-confirmed', questions.join(' '), { questions });
      }
      return recordMeasurement(ctx.access, ctx.patient.id, row, input.confirmed);
    }),

  recordEffusion: recordProcedure
    .input(z.object({ effusion: z.unknown() }))
    .mutation(async ({ ctx, input }) => {
      const row = checked(effusionFields, input.effusion);
      await requireHandsOnTest(ctx.access, ctx.patient.id, 'effusion-test');
      return ctx.access.store.write(async () => {
        const id = await recordEffusion(ctx.access, ctx.patient.id, row.joint, row.grade);
        await evaluateRecord(ctx.access, ctx.patient.id, {
          cause: 'clinician',
          sessionId: null,
          morningId: null,
        });
        return id;
      });
    }),
});
