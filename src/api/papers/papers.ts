/** What papers are made from, for whoever may open the record. The file itself is made where it is sent. */
import { z } from 'zod';
import { patientProcedure, recordProcedure, router } from '../trpc.ts';
import { letterPaperFor } from './letter-paper.ts';
import { mostWeeks, planPaperFor } from './plan-paper.ts';

const weeks = z.object({ weeks: z.number().int().min(1).max(mostWeeks).default(1) });

/** At the clinic's desk. */
export const papersRouter = router({
  letter: recordProcedure.query(({ ctx: { access, patient } }) => letterPaperFor(access, patient)),

  plan: recordProcedure
    .input(weeks)
    .query(({ ctx: { access, patient }, input }) => planPaperFor(access, patient, input.weeks)),
});

/** From the own phone. */
export const ownPapersRouter = router({
  plan: patientProcedure
    .input(weeks)
    .query(({ ctx: { access, patient }, input }) => planPaperFor(access, patient, input.weeks)),
});
