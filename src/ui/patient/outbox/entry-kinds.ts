/** What a phone sends, and a message among it. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { MorningEntry, SessionEntry, TwoHoursEntry } from '#core/record/entries.ts';

export type EntryKind = 'session' | 'morning' | 'two-hours' | 'message' | 'sign';

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

export type Entry = SessionEntry | MorningEntry | TwoHoursEntry | MessageEntry | SignEntry;
