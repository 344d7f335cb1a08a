/** What the letter and the sheet at the end of care are put together from. */
import { z } from 'zod';
import { recordProcedure, router } from '#api/trpc.ts';
import { documentFactsFor } from '#data/episode/documents.ts';

export const documentsRouter = router({
  /** null while the episode of care goes on, or where there is none. */
  get: recordProcedure
    .input(z.object({ episodeId: z.string().max(64) }))
    .query(({ ctx, input }) => documentFactsFor(ctx.access, ctx.patient, input.episodeId)),
});
