/** The registry for clinicians: every row with its citation, and a way to try it. */
import { z } from 'zod';
import { calculationById, registry } from '#core/calculations/registry.ts';
import { Problem } from '../errors.ts';
import { evaluate } from '../inputs/evaluate.ts';
import { clinicianProcedure, router } from '../trpc.ts';

export const calculationsRouter = router({
  list: clinicianProcedure.query(() =>
    registry.map(({ id, title, area, input, result, citations, example }) => ({
      id,
      title,
      area,
      input,
      result,
      citations,
      example,
    })),
  ),

  tryOne: clinicianProcedure
    .input(z.object({ id: z.string().max(80), input: z.unknown() }))
    .mutation(({ input }) => {
      const row = calculationById(input.id);
      if (!row) throw new Problem('not-found', 'There is no calculation of that name.');
      return evaluate(row, input.input);
    }),
});
