/** A row as a form takes it, to be corrected there. */
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';

export interface EnteredRow {
  readonly id: string;
  readonly recordedAt: number;
  /** The day it speaks of. */
  readonly day: Day;
  /** null where it speaks of no joint. */
  readonly joint: string | null;
  /** As the form of its subject takes it. */
  readonly entered: Readonly<Record<string, unknown>>;
}

export type Read = (access: Access, patientId: string) => Promise<readonly EnteredRow[]>;
