/** What a file that is taken in gives, whichever format it has: place by place what it says and what is wrong there. */
import type { ImportedThing } from '#core/record/imported.ts';

/** What cannot be taken as it stands, and how to put it right. */
export interface Fault {
  /** Row of the file, its heading being row 1; of a Bundle the entry, of lines the line. */
  readonly place: number;
  /** Column, or element of the resource. */
  readonly at: string;
  readonly found: string;
  readonly write: string;
}

export interface Read {
  readonly place: number;
  readonly things: readonly ImportedThing[];
  readonly faults: readonly Fault[];
}

export interface Source {
  /** Reads the file from its beginning; some places at once, so that many rows are quick. */
  readonly read: () => AsyncIterable<readonly Read[]>;
}

/** The file as a whole cannot be read as it was said to be. */
export class CannotRead extends Error {}

/** Bytes of a file, from its beginning each time. */
export type Bytes = () => AsyncIterable<Uint8Array>;
