/** What a phone sends, and a message among it. */
import type { MorningEntry, SessionEntry, TwoHoursEntry } from '#core/record/entries.ts';

export type EntryKind = 'session' | 'morning' | 'two-hours' | 'message';

/** To the clinic; it carries no answers. */
export interface MessageEntry {
  readonly entryId: string;
  readonly day: string;
  readonly text: string;
  readonly redFlags: null;
}

export type Entry = SessionEntry | MorningEntry | TwoHoursEntry | MessageEntry;
