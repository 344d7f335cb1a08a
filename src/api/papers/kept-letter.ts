/** A kept letter in words: as it was signed, or as the record makes it today. */
import { createHash } from 'node:crypto';
import { type LetterState, letterState, linesIn, type SummaryPart } from '#core/episode/letters/letter.ts';
import type { Access } from '#data/access.ts';
import { type KeptLetter, type LetterDraft, letterOf } from '#data/episode/letters.ts';
import { notesOf } from '#data/episode/visit-notes.ts';
import type { Patient } from '#data/patients/people.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { letterSpeech } from '#messages/papers/colleague-words.ts';
import { type LetterWords, letterWords } from '#papers/letter/letter-data.ts';
import type { LetterFrame, Voiding } from '#papers/letter/letter-frame.ts';
import { madeSummary } from '#papers/letter/letter-summary.ts';
import { Problem } from '../errors.ts';
import { letterPaperFor } from './letter-paper.ts';

type Signer = NonNullable<LetterFrame['signed']>;

const frameOf = (draft: LetterDraft, signed: Signer | null): LetterFrame => {
  const { name, role, organisation, address, copies, toPatient, own } = draft;
  return {
    addressee: { name, role, organisation, address },
    copies: linesIn(copies),
    toPatient,
    own,
    signed,
  };
};

/** A language that is gone leaves its letters in English. */
const tagOf = ({ language }: LetterDraft): LanguageTag =>
  languages.find(({ tag }) => tag === language)?.tag ?? 'en';

/** Notes that were chosen and are still on record; the rest were marked as entered in error since. */
const notesLeft = async (access: Access, patientId: string, chosen: readonly string[]) => {
  if (chosen.length === 0) return [];
  const on = new Set((await notesOf(access, patientId)).map(({ id }) => id));
  return chosen.filter((id) => on.has(id));
};

export interface MadeLetter {
  readonly words: LetterWords;
  /** The sentences of the summary as the record makes them. */
  readonly made: Readonly<Record<SummaryPart, string>>;
  /** Notes that were chosen and left the record since. */
  readonly notesGone: number;
}

/** From the record as it stands now; with a signature for the words that are kept. */
export const makeLetter = async (
  access: Access,
  patient: Patient,
  draft: LetterDraft,
  signed: Signer | null = null,
): Promise<MadeLetter> => {
  const notes = await notesLeft(access, patient.id, draft.noteIds);
  const paper = await letterPaperFor(access, patient, notes);
  const speech = letterSpeech(tagOf(draft));
  return {
    words: letterWords(paper, frameOf(draft, signed), speech, access.day),
    made: madeSummary(paper, speech),
    notesGone: draft.noteIds.length - notes.length,
  };
};

/** What was read is what is signed: the words of a draft, told by a few letters. */
export const digestOf = (words: LetterWords): string =>
  createHash('sha256').update(JSON.stringify(words)).digest('hex').slice(0, 24);

export const keptLetter = async (
  access: Access,
  patientId: string,
  letterId: string,
): Promise<KeptLetter> => {
  const letter = await letterOf(access, patientId, letterId);
  if (!letter) throw new Problem('not-found', 'There is no such letter on this record.');
  return letter;
};

export interface ReadLetter {
  readonly state: LetterState;
  readonly words: LetterWords;
  /** null once it is signed: then its words are kept. */
  readonly made: MadeLetter['made'] | null;
  readonly notesGone: number;
  readonly voided: Voiding | null;
}

export const readLetter = async (
  access: Access,
  patient: Patient,
  letter: KeptLetter,
): Promise<ReadLetter> => {
  const { signature, voided, draft } = letter;
  const read = signature
    ? { words: signature.words as LetterWords, made: null, notesGone: 0 }
    : await makeLetter(access, patient, draft);
  return {
    ...read,
    state: letterState(letter),
    voided: voided && { on: voided.day, by: voided.byName, reason: voided.reason },
  };
};
