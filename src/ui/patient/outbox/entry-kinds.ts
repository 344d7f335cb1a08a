/** What a phone sends, and a message among it. */

import type { OwnAnswer } from '#core/assessment/questionnaires/questionnaire.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { MorningEntry, SessionEntry, TwoHoursEntry } from '#core/record/entries.ts';
import type { Carer } from '#core/record/entry-words.ts';

export type EntryKind = 'session' | 'morning' | 'two-hours' | 'message' | 'sign' | 'home-answers';

/** To the clinic; it carries no answers. */
export interface MessageEntry {
  readonly entryId: string;
  readonly day: string;
  readonly text: string;
  readonly redFlags: null;
}

export const messageEntry = (
  { entryId, day }: Pick<MessageEntry, 'entryId' | 'day'>,
  text: string,
): MessageEntry => ({ entryId, day, text, redFlags: null });

/** A warning sign told outside a session and a morning check. */
export interface SignEntry {
  readonly entryId: string;
  readonly day: string;
  readonly redFlags: readonly RedFlag[];
}

/** Answers to what the clinic asks now and then, at home. */
export interface HomeAnswersEntry {
  readonly entryId: string;
  readonly day: string;
  readonly homeQuestionsId: string;
  /** null = the activities the person chose. */
  readonly version: number | null;
  readonly answers: readonly { readonly question: string; readonly answer: OwnAnswer }[];
  readonly enteredAs?: Carer;
  readonly redFlags: null;
}

export type Entry = SessionEntry | MorningEntry | TwoHoursEntry | MessageEntry | SignEntry | HomeAnswersEntry;
