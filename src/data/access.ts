/**
 * Who is asking, for which clinic, at which clinical instant. Every data function takes one, so a
 * query cannot be written without its clinic.
 */
import type { Day } from '#core/time/day.ts';
import type { Store } from './database/store.ts';

export interface Access {
  readonly store: Store;
  /** Key of the audit chain, kept outside the database file. */
  readonly auditKey: Uint8Array;
  readonly clinicId: string;
  readonly actorId: string;
  readonly actorName: string;
  /** Clinical instant, epoch milliseconds. */
  readonly now: number;
  /** Civil day of the clinic at that instant. */
  readonly day: Day;
  /** A correction read as though its new plan had been seen, for showing that plan before anybody agrees to it. */
  readonly asSeen?: string;
  /**
   * A record read as it was known at an instant: what was recorded later, amended later or confirmed later is not
   * in it. For looking back alone; what is decided now is decided on everything there is.
   */
  readonly knownAt?: number;
}

/** What had been recorded by the instant a record is read at; everything, where none is named. */
export const knownBy =
  <R>({ knownAt }: Pick<Access, 'knownAt'>, at: (row: R) => number) =>
  (rows: readonly R[]): readonly R[] =>
    knownAt === undefined ? rows : rows.filter((row) => at(row) <= knownAt);

/** The same for rows that say themselves when they were recorded. */
export const knownRows = <R extends { readonly recordedAt: number }>(
  access: Pick<Access, 'knownAt'>,
  rows: readonly R[],
): readonly R[] => knownBy<R>(access, ({ recordedAt }) => recordedAt)(rows);

/** Whose row it is, and who wrote it when. */
export const recordedFor = (access: Access, patientId: string) => ({
  clinicId: access.clinicId,
  patientId,
  recordedAt: access.now,
  recordedBy: access.actorId,
});
