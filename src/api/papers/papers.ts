/** What papers are made from, for whoever may open the record. The file itself is made where it is sent. */
import { z } from 'zod';
import { languages } from '#messages/languages.ts';
import { patientProcedure, recordProcedure, router } from '../trpc.ts';
import { dischargePaperFor, selfManagementPaperFor } from './end-of-care-papers.ts';
import { flareNotePaperFor } from './flare-note-paper.ts';
import { handoverPaperFor } from './handover-paper.ts';
import { letterPaperFor } from './letter-paper.ts';
import { mostWeeks, planPaperFor } from './plan-paper.ts';
import { recordPaperFor } from './record-paper.ts';

const weeks = z.object({ weeks: z.number().int().min(1).max(mostWeeks).default(1) });

/** null = the newest one. */
const episode = z.object({ episodeId: z.string().max(64).nullable().default(null) });
const language = z.enum(languages.map(({ tag }) => tag)).default('en');

/** At the clinic's desk. */
export const papersRouter = router({
  discharge: recordProcedure
    .input(episode.extend({ language }))
    .query(({ ctx: { access, patient }, input }) =>
      dischargePaperFor(access, patient, input.episodeId, input.language),
    ),

  flareNote: recordProcedure.query(({ ctx: { access, patient } }) => flareNotePaperFor(access, patient)),

  handover: recordProcedure.query(({ ctx: { access, patient } }) => handoverPaperFor(access, patient)),

  selfManagement: recordProcedure
    .input(episode.extend({ language }))
    .query(({ ctx: { access, patient }, input }) =>
      selfManagementPaperFor(access, patient, input.episodeId, input.language),
    ),

  /** Visit notes stand in it by choice alone. */
  letter: recordProcedure
    .input(z.object({ notes: z.array(z.string().max(64)).max(20).default([]) }))
    .query(({ ctx: { access, patient }, input }) => letterPaperFor(access, patient, input.notes)),

  record: recordProcedure.query(({ ctx: { access, patient } }) => recordPaperFor(access, patient)),

  plan: recordProcedure
    .input(weeks)
    .query(({ ctx: { access, patient }, input }) => planPaperFor(access, patient, input.weeks)),
});

/** From the own phone. */
export const ownPapersRouter = router({
  record: patientProcedure.query(({ ctx: { access, patient } }) => recordPaperFor(access, patient)),

  plan: patientProcedure
    .input(weeks)
    .query(({ ctx: { access, patient }, input }) => planPaperFor(access, patient, input.weeks)),
});
