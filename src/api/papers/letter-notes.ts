/** Visit notes in a letter, by choice alone. */
import { noteParts } from '#core/episode/visit-note.ts';
import type { Access } from '#data/access.ts';
import { notesOf } from '#data/episode/visit-notes.ts';
import type { LetterPaper } from '#papers/letter/letter-paper.ts';
import { Problem } from '../errors.ts';

/** Those chosen and still on record; one that is not is refused, so that no letter is shorter than asked for. */
export const chosenNotes = async (
  access: Access,
  patientId: string,
  chosen: readonly string[],
): Promise<LetterPaper['notes']> => {
  if (chosen.length === 0) return [];
  const notes = (await notesOf(access, patientId)).filter(({ id }) => chosen.includes(id)).toReversed();
  if (notes.length < new Set(chosen).size) {
    throw new Problem('not-found', 'A note chosen for this letter is not on record any more. Choose again.');
  }
  return notes.map((note) => ({
    on: note.day,
    by: note.byName,
    parts: noteParts.flatMap((part) => {
      const text = note[part];
      return text === null ? [] : [{ part, text }];
    }),
  }));
};
