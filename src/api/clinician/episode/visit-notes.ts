/** Notes of one person: written, searched, and never edited; a wrong one is marked on the corrections of its page. */
import { z } from 'zod';
import { recordProcedure, router } from '#api/trpc.ts';
import { isInNote } from '#core/episode/visit-note.ts';
import { notesOf } from '#data/episode/visit-notes.ts';
import { madeId } from '../../outputs.ts';
import { enter, firstEntry } from '../corrections/enter.ts';

export const visitNotesRouter = router({
  /** Newest day first; nothing looked for is in every note. */
  list: recordProcedure
    .input(z.object({ wanted: z.string().trim().max(100).default('') }))
    .query(async ({ ctx, input }) => {
      const notes = await notesOf(ctx.access, ctx.patient.id);
      return { all: notes.length, notes: notes.filter((note) => isInNote(note, input.wanted)) };
    }),

  record: recordProcedure
    .input(z.object({ note: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) => enter.note(firstEntry(ctx), input.note)),
});
