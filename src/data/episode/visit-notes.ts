/** Notes of a person, newest day first; those entered in error stay and say so. */
import { desc } from 'drizzle-orm';
import { asCorrected } from '#core/corrections/correction.ts';
import { type Episode, isOver } from '#core/episode/episode.ts';
import type { VisitNote } from '#core/episode/visit-note.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { visitNote } from '../schema/notes.ts';
import { episodesOf, writtenNow } from './episodes.ts';

const noteRows = patientQuery((db) =>
  db
    .select()
    .from(visitNote)
    .where(ofPatient(visitNote))
    .orderBy(desc(visitNote.day), desc(visitNote.recordedAt), desc(visitNote.id)),
);

export type RecordedNote = VisitNote & {
  readonly id: string;
  readonly episodeId: string | null;
  readonly recordedAt: number;
  readonly byName: string;
};

/** All that was ever written, entries in error among them. */
export const notesOnRecord = async (access: Access, patientId: string): Promise<readonly RecordedNote[]> =>
  (await noteRows(access, patientId)).map(
    ({ clinicId: _clinic, patientId: _patient, recordedBy: _by, ...note }) => note,
  );

export const notesOf = async (access: Access, patientId: string): Promise<readonly RecordedNote[]> =>
  asCorrected(await notesOnRecord(access, patientId), await correctionIndexFor(access, patientId));

/** The episode that was opened last and has not ended. */
const openIn = (episodes: readonly Episode[]): string | null =>
  episodes.findLast((one) => !isOver(one))?.id ?? null;

/** Belongs to the episode that is open as it is written. */
export const recordNote = (access: Access, patientId: string, note: VisitNote): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    const episodeId = openIn(await episodesOf(access, patientId));
    await tx.insert(visitNote).values({ ...now, episodeId, ...note });
    await auditWrite(tx, access, 'visit-note', {
      subjectId: now.id,
      patientId,
      detail: { contact: note.contact, day: note.day },
    });
    return now.id;
  });
