/** What a row is given, and what was done in it. */
import type { MostHours } from '#core/danger/contact-again.ts';
import type { WorklistFilters } from '../answers.ts';
import type { BenchRow } from './row-props.ts';

/** The form that is open under a row. */
export type OpenForm = 'contact' | 'sign' | 'reply' | 'snooze' | 'assign';

/** What was done in this row, by whom is the record's to say. */
export interface Done {
  readonly id: string;
  readonly text: string;
  /** Why it cannot be undone, or how it is; said with it. */
  readonly note: string;
  /** null = it cannot be undone. */
  readonly undo: (() => Promise<void>) | null;
  readonly isUndone?: boolean;
}

export interface RowProps {
  readonly row: BenchRow;
  readonly done: readonly Done[];
  /** Something of the patient is on the list; else only what was done here is shown. */
  readonly isListed: boolean;
  readonly colleagues: WorklistFilters['clinicians'];
  readonly signer: string;
  readonly againHours: number;
  readonly mostAgainHours: MostHours;
  /** Instant at which the list was read. */
  readonly readAt: number;
  readonly onDone: (done: Done) => void;
  readonly onUndone: (done: Done) => void;
}
