/** Whether an entry of a phone is here already: the same, or one that says something else under the same id. */
import { hash, randomUUID } from 'node:crypto';
import { and, eq, sql } from 'drizzle-orm';
import type { MorningEntry, SessionEntry, TwoHoursEntry } from '#core/record/entries.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import type { Db } from '../database/connection.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { entryConflict, morning, trainingSession, twoHours } from '../schema/schema.ts';

export type Stored =
  | { readonly kind: 'stored'; readonly id: string; readonly clockDoubtful: boolean }
  | { readonly kind: 'known'; readonly id: string; readonly clockDoubtful: boolean }
  | { readonly kind: 'conflict' }
  /** It answers a session that has not arrived. */
  | { readonly kind: 'no-session' }
  /** A set names a prescription that is not this patient's. */
  | { readonly kind: 'unknown-prescription'; readonly prescriptionId: string };

export type Entry = SessionEntry | MorningEntry | TwoHoursEntry;

/** Content without the time of sending, which differs between a send and its repeat. */
export const digestOf = ({ sentAt: _, ...content }: Entry): string => hash('sha256', JSON.stringify(content));

type EntryTable = typeof trainingSession | typeof morning | typeof twoHours;

const sameEntry = (table: EntryTable) =>
  patientQuery((db) =>
    db
      .select({ id: table.id, digest: table.digest, clockDoubtful: table.clockDoubtful })
      .from(table)
      .where(and(ofPatient(table), eq(table.entryId, sql.placeholder('entryId')))),
  );
const [sameSession, sameMorning, sameTwoHours] = [trainingSession, morning, twoHours].map(sameEntry);

const knownIn = (table: EntryTable) =>
  (table === trainingSession ? sameSession : table === morning ? sameMorning : sameTwoHours)!;

/**
 * Contents kept under one id. A phone sends one again, and a fault of ours may change it once or twice; what
 * comes in more shapes is a program, and is told the same without being kept.
 */
const mostConflicts = 10;

const conflictsOf = patientQuery((db) =>
  db
    .select({ digest: entryConflict.digest })
    .from(entryConflict)
    .where(and(ofPatient(entryConflict), eq(entryConflict.entryId, sql.placeholder('entryId')))),
);

/** Whether this content is kept already, or enough others are. */
const isKnownConflict = async (access: Access, patientId: string, entryId: string, digest: string) => {
  const rows = await conflictsOf(access, patientId, { entryId });
  return rows.length >= mostConflicts || rows.some((row) => row.digest === digest);
};

/** What was answered before, or null when the entry is new. */
export const known = async (
  tx: Db,
  access: Access,
  patientId: string,
  entry: Entry,
  table: EntryTable,
): Promise<Stored | null> => {
  const [row] = await knownIn(table)(access, patientId, { entryId: entry.entryId });
  if (!row) return null;
  const digest = digestOf(entry);
  if (row.digest === digest) return { kind: 'known', id: row.id, clockDoubtful: row.clockDoubtful };
  if (await isKnownConflict(access, patientId, entry.entryId, digest)) return { kind: 'conflict' };
  await tx.insert(entryConflict).values({
    id: randomUUID(),
    clinicId: access.clinicId,
    patientId,
    entryId: entry.entryId,
    digest,
    payload: entry,
    arrivedAt: access.now,
  });
  changed(access, patientId);
  await auditWrite(tx, access, 'entry-conflict', { subjectId: entry.entryId, patientId });
  return { kind: 'conflict' };
};
