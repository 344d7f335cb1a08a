/** What a phone sends, and a message among it. */
export type EntryKind = 'session' | 'morning' | 'two-hours' | 'message';

/** To the clinic; it carries no answers. */
export interface MessageEntry {
  readonly entryId: string;
  readonly day: string;
  readonly text: string;
  readonly redFlags: null;
}
