/** Screening, clearances and what they leave of each method. */
import { z } from 'zod';
import { screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { screeningsOf } from '#data/screening/screenings.ts';
import { freshRecordProcedure, recordProcedure, router } from '../trpc.ts';
import { enter, firstEntry } from './corrections/enter.ts';
import { inEnglish } from './question-in-english.ts';

export const screeningRouter = router({
  sheet: recordProcedure.query(async ({ ctx }) => ({
    version: screeningSheetVersion,
    items: screeningItems.map(inEnglish),
    newest: (await screeningsOf(ctx.access, ctx.patient.id))[0] ?? null,
  })),

  list: recordProcedure.query(({ ctx }) => screeningsOf(ctx.access, ctx.patient.id)),

  record: recordProcedure.input(z.object({ screening: z.unknown() })).mutation(({ ctx, input }) =>
    ctx.access.store.write(async () => {
      const id = await enter.screening(firstEntry(ctx), input.screening);
      return (await screeningsOf(ctx.access, ctx.patient.id)).find((row) => row.id === id)!.version;
    }),
  ),

  outcomes: recordProcedure.query(
    async ({ ctx }) => (await prescribingContextFor(ctx.access, ctx.patient)).outcomes,
  ),

  clear: freshRecordProcedure
    .input(z.object({ clearance: z.unknown() }))
    .mutation(({ ctx, input }) => enter.clearance(firstEntry(ctx), input.clearance)),
});
