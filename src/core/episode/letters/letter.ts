/**
 * A letter to somebody who treats the same person, as it is kept: a draft in versions, signed once, and void
 * with a reason where it was wrong. Nothing of a signed letter changes any more.
 */
import type { Field } from '../../calculations/describe.ts';

/** The sentences of the summary, in the order in which they are read. Each is made from the record until somebody writes another. */
export const summaryParts = ['care', 'outcomes', 'course', 'now'] as const;
export type SummaryPart = (typeof summaryParts)[number];

const text = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, about }) as const;
const maybe = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ ...text(name, maxLength, about), nullable: true }) as const;

/** To whom; in which language is asked beside them, by those who know the languages. */
export const addresseeFields = [
  text('name', 120, 'To: name'),
  maybe('role', 120, 'Role, such as general practitioner'),
  maybe('organisation', 160, 'Practice or hospital'),
  maybe('address', 400, 'Address'),
  maybe('copies', 600, 'Copies to, one a line'),
  { name: 'toPatient', kind: 'flag', about: 'A copy to the patient' },
] as const satisfies readonly Field[];

const longestSentence = 600;

export const summaryFields = [
  maybe('care', longestSentence, 'Care and work'),
  maybe('outcomes', longestSentence, 'Outcomes'),
  maybe('course', longestSentence, 'How the joints answered'),
  maybe('now', longestSentence, 'State now'),
] as const satisfies readonly (Field & { readonly name: SummaryPart })[];

export const signatureFields = [
  text('role', 120, 'Your role, as it stands under the letter'),
  maybe('registration', 60, 'Your registration number'),
] as const satisfies readonly Field[];

export const voidFields = [text('reason', 300, 'Reason')] as const satisfies readonly Field[];

export interface Addressee {
  readonly name: string;
  readonly role: string | null;
  readonly organisation: string | null;
  readonly address: string | null;
}

/** A sentence written in the place of the one made from the record, and the words of that one when it was written. */
interface OwnSentence {
  readonly text: string;
  readonly instead: string;
  readonly by: string;
}

export type OwnSentences = Readonly<Partial<Record<SummaryPart, OwnSentence>>>;

export type LetterState = 'draft' | 'signed' | 'void';

export const letterState = (letter: {
  readonly signature: object | null;
  readonly voided: object | null;
}): LetterState => (letter.voided ? 'void' : letter.signature ? 'signed' : 'draft');

/** What was typed, beside what the record says: the same words, or none, are nothing of one's own. */
export const ownSentences = (
  typed: Readonly<Record<SummaryPart, string | null>>,
  made: Readonly<Record<SummaryPart, string>>,
  before: OwnSentences,
  by: string,
): OwnSentences =>
  Object.fromEntries(
    summaryParts.flatMap((part) => {
      const written = typed[part]?.trim() ?? '';
      if (written === '' || written === made[part].trim()) return [];
      const kept = before[part];
      return [[part, kept?.text === written ? kept : { text: written, instead: made[part], by }]];
    }),
  );

/** A line each, none empty. */
export const linesIn = (typed: string | null): readonly string[] =>
  (typed ?? '')
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
