/** The clinic's places. */
import { z } from 'zod';
import { addSite, closeSite, sitesOf } from '#data/clinic/sites.ts';
import { Problem } from '../errors.ts';
import { madeId, nothing } from '../outputs.ts';
import { administratorProcedure, router } from '../trpc.ts';

export const sitesRouter = router({
  list: administratorProcedure.query(({ ctx }) => sitesOf(ctx.access)),

  add: administratorProcedure
    .input(
      z.object({
        name: z.string().trim().min(2).max(80),
        address: z.string().trim().max(200).nullable().default(null),
      }),
    )
    .output(madeId)
    .mutation(({ ctx, input }) => addSite(ctx.access, input)),

  close: administratorProcedure
    .input(z.object({ siteId: z.string().min(1).max(64) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const closed = await closeSite(ctx.access, input.siteId);
      if (!closed)
        throw new Problem('conflict', 'This site is already closed or does not belong to your clinic.');
    }),
});
