/** Notes of visits and calls. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'Notes',
  write: 'Write a note',
  save: 'Sign this note as {name}',
  saved: 'Signed. It is on record and is not edited; mark it below if it was wrong.',
  none: 'No note is on record.',
  find: 'Find in these notes',
  'find-go': 'Find',
  'show-all': 'Show all',
  found: {
    by: 'count',
    one: '{count} of {all} notes has these words.',
    other: '{count} of {all} notes have these words.',
  },
  by: '{contact}, {name}, written {at}',
  'without-headings': 'Note',
  'part.subjective': 'Subjective',
  'part.objective': 'Objective',
  'part.assessment': 'Assessment',
  'part.plan': 'Plan',
  'struck.read': 'Read it whole',
  'struck.about': 'Kept as it was signed; it no longer counts as a note.',
  'draft.waiting': 'Keeping what is typed …',
  'draft.saved': 'Kept as a draft for you alone. It is not signed.',
  'draft.not-saved': 'The draft could not be kept. Sign it before you leave this page.',
  'in-letter': 'Notes in a letter',
  'in-letter-hint': 'Only those you tick stand in the letter, in the record behind its first page.',
  'open-letter': 'Begin a letter with them',
  about:
    'Seen by the clinicians who may open this record, in the record as a file, and by the patient in the own copy of the record. No rule reads them.',
} as const;

export const say = sayIn(words);
