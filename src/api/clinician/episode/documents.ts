/** What the letter and the sheet at the end of care are put together from. */
import { z } from 'zod';
import { recordProcedure, router } from '#api/trpc.ts';
import { selfManagementOf } from '#core/episode/documents/self-management.ts';
import { documentFactsFor } from '#data/episode/documents.ts';
import { languages } from '#messages/languages.ts';
import { selfManagementIn } from '#messages/papers/self-management.ts';

const tags = languages.map(({ tag }) => tag);

export const documentsRouter = router({
  /** null while the episode of care goes on, or where there is none. `language` is that of the sheet. */
  get: recordProcedure
    .input(z.object({ episodeId: z.string().max(64), language: z.enum(tags).default('en') }))
    .query(async ({ ctx, input }) => {
      const facts = await documentFactsFor(ctx.access, ctx.patient, input.episodeId);
      const sheet = facts && selfManagementOf(facts);
      return facts && { facts, selfManagement: sheet && selfManagementIn(input.language, sheet) };
    }),
});
