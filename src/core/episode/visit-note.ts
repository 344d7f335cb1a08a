/**
 * What a clinician writes of a contact with a patient: free text, or under the headings of a clinical note
 * (subjective, objective, assessment, plan; common practice, no source). Nothing of it is read by a rule.
 */
import type { Field } from '../calculations/describe.ts';
import type { Refusal } from '../outcome.ts';
import { type Day, daysBetween } from '../time/day.ts';
import { hasWords } from '../word-search.ts';
import { visitPlaces } from './remote-visit.ts';

/** In the order in which a note is read. */
export const noteParts = ['subjective', 'objective', 'assessment', 'plan', 'text'] as const;
export type NotePart = (typeof noteParts)[number];

/** Without the patient: a result that came in, a talk with a colleague. */
export const noteContacts = [...visitPlaces, 'without-the-patient'] as const;
export type NoteContact = (typeof noteContacts)[number];

const longestPart = 4000;

const part = <const N extends NotePart>(name: N, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength: longestPart, nullable: true, about }) as const;

export const visitNoteFields = [
  { name: 'contact', kind: 'enum', values: noteContacts, about: 'How' },
  { name: 'day', kind: 'day', about: 'Day' },
  part('subjective', 'Subjective'),
  part('objective', 'Objective'),
  part('assessment', 'Assessment'),
  part('plan', 'Plan'),
  part('text', 'Anything else, or a note without headings'),
] as const satisfies readonly Field[];

export type VisitNote = Readonly<Record<NotePart, string | null>> & {
  readonly contact: NoteContact;
  readonly day: Day;
};

/** A note says something, and of a day that has been. */
export const visitNoteRefusals = (note: VisitNote, today: Day): readonly Refusal[] => [
  ...(noteParts.every((name) => note[name] === null)
    ? [
        {
          field: 'input.text',
          code: 'missing' as const,
          reason: 'Write something under at least one heading.',
        },
      ]
    : []),
  ...(daysBetween(note.day, today) < 0
    ? [
        {
          field: 'input.day',
          code: 'too-high' as const,
          reason: 'The day of a note is today or earlier.',
        },
      ]
    : []),
];

/** Every word looked for begins a word of the note, in any order. */
export const isInNote = (note: Pick<VisitNote, NotePart>, wanted: string): boolean =>
  hasWords(noteParts.map((name) => note[name] ?? '').join(' '), wanted);
