/** Screening, clearances and what they leave of each method. */
import { z } from 'zod';
import { unknownItems } from '#api/inputs/screening-items.ts';
import { screeningFields } from '#core/record/staff-fields.ts';
import { itemsAskedAt, screeningSheetVersion } from '#core/screening/items.ts';
import { ageYears } from '#core/time/day.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { newestScreening, recordAnswers, screeningsOf } from '#data/screening/screenings.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { freshRecordProcedure, recordProcedure, router } from '../trpc.ts';
import { enter, firstEntry } from './corrections/enter.ts';
import { inEnglish } from './question-in-english.ts';

export const screeningRouter = router({
  sheet: recordProcedure.query(async ({ ctx }) => ({
    version: screeningSheetVersion,
    items: itemsAskedAt(ageYears(ctx.patient.birthDay, ctx.access.day)).map(inEnglish),
    newest: await newestScreening(ctx.access, ctx.patient.id),
  })),

  list: recordProcedure.query(({ ctx }) => screeningsOf(ctx.access, ctx.patient.id)),

  record: recordProcedure.input(z.object({ screening: z.unknown() })).mutation(({ ctx, input }) =>
    ctx.access.store.write(async () => {
      const id = await enter.screening(firstEntry(ctx), input.screening);
      return (await screeningsOf(ctx.access, ctx.patient.id)).find((row) => row.id === id)!.version;
    }),
  ),

  /** One wrong or missing answer is one answer again; the rest stays as it was asked. */
  changeAnswers: recordProcedure
    .input(z.object({ screening: z.unknown() }))
    .mutation(async ({ ctx, input }) => {
      const sheet = checked(screeningFields, input.screening, (value) =>
        unknownItems(value.answers, ctx.access.day),
      );
      const newest = await newestScreening(ctx.access, ctx.patient.id);
      if ([newest?.sheetVersion, sheet.sheetVersion].some((version) => version !== screeningSheetVersion))
        throw new Problem(
          'conflict',
          'No screening with the present questions is on record. Ask all of them once, then single answers can be changed.',
        );
      return { changed: await recordAnswers(ctx.access, ctx.patient, sheet) };
    }),

  outcomes: recordProcedure.query(
    async ({ ctx }) => (await prescribingContextFor(ctx.access, ctx.patient)).outcomes,
  ),

  clear: freshRecordProcedure
    .input(z.object({ clearance: z.unknown() }))
    .mutation(({ ctx, input }) => enter.clearance(firstEntry(ctx), input.clearance)),
});
