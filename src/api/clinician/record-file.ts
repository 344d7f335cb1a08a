/**
 * The record as a file for somebody the patient names: with consent and a fresh sign-in. The patient’s own copy of
 * the same needs neither and is among the exports: it is theirs.
 */
import { z } from 'zod';
import { isGiven } from '#core/episode/consent.ts';
import { consentsOf } from '#data/episode/consents.ts';
import { giveRecordFile, handedOn } from '#data/patients/record-files.ts';
import { recordSentences } from '#exchange/json/record-sentences.ts';
import { Problem } from '../errors.ts';
import { freshRecordProcedure, recordProcedure, router } from '../trpc.ts';

export const recordFileRouter = router({
  list: recordProcedure.query(async ({ ctx: { access, patient } }) => ({
    isConsented: isGiven(await consentsOf(access, patient.id), 'export'),
    handedOn: await handedOn(access, patient.id),
  })),

  make: freshRecordProcedure
    .input(z.object({ handedTo: z.string().trim().min(2).max(120) }))
    .mutation(async ({ ctx: { access, patient }, input }) => {
      if (!isGiven(await consentsOf(access, patient.id), 'export')) {
        throw new Problem(
          'refused',
          'The patient has not consented to handing the record over as a file. Ask, and record the answer under Care.',
        );
      }
      return giveRecordFile(access, patient.id, input.handedTo, recordSentences);
    }),
});
