/**
 * Retention of the audit. When the years the clinic has set are over, the oldest rows of its chain
 * move to a file of their own, as they were sealed. A sealed note stays in the database: what is left
 * begins where the note says, so that rows taken away without one are found. What becomes of the file
 * is the clinic's to decide; nothing here destroys it.
 */
import { createHmac } from 'node:crypto';
import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, readFileSync, writeSync } from 'node:fs';
import path from 'node:path';
import { and, asc, eq, gte, lt, lte, max, min } from 'drizzle-orm';
import { recordKeepingSettings } from '#core/record/settings.ts';
import type { Access } from '../access.ts';
import { settingValue } from '../clinic/clinic-settings.ts';
import type { Store } from '../database/store.ts';
import { audit, auditSegment } from '../schema/schema.ts';
import { type Acting, auditWrite } from './audit.ts';
import type { AuditRow } from './seal.ts';

export type Segment = typeof auditSegment.$inferSelect;

/** From when on a clinic keeps its audit at hand, by the years it has set. */
export const auditStoredSince = async (
  access: Pick<Access, 'store' | 'clinicId' | 'now'>,
): Promise<number> => {
  const years = await settingValue(access, recordKeepingSettings, 'audit-retention-years');
  return access.now - years * 365.25 * 86_400_000;
};

/** What the first note of a clinic follows. */
export const firstNote = '0'.repeat(64);

export const noteSealOf = (key: Uint8Array, note: Omit<Segment, 'seal'>, previous: string): string => {
  const { clinicId, lastSequence, lastSeal, lastAt, archivedAt } = note;
  return createHmac('sha256', key)
    .update(JSON.stringify(['audit-segment', clinicId, lastSequence, lastSeal, lastAt, archivedAt, previous]))
    .digest('hex');
};

/** A copy made by an older release has no such table, and can be verified all the same. */
const knowsSegments = (store: Store): boolean =>
  store.reader.client.prepare("SELECT 1 FROM sqlite_master WHERE name = 'audit_segment'").get() !== undefined;

/** Oldest first. */
export const segmentsOf = async (store: Store, clinicId: string): Promise<readonly Segment[]> =>
  knowsSegments(store)
    ? store.read
        .select()
        .from(auditSegment)
        .where(eq(auditSegment.clinicId, clinicId))
        .orderBy(asc(auditSegment.lastSequence))
    : [];

export const archiveFolderOf = (databaseFile: string): string => `${databaseFile}.audit-archive`;

export const archiveFileOf = (databaseFile: string, { clinicId, lastSequence }: Segment): string =>
  path.join(archiveFolderOf(databaseFile), `${encodeURIComponent(clinicId)}-to-${lastSequence}.jsonl`);

const parsed = (line: string): AuditRow | null => {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
};

/** Rows of a moved stretch up to the first line that cannot be read; null when its file is not here any more. */
export const archivedRows = (databaseFile: string, segment: Segment): readonly AuditRow[] | null => {
  const file = archiveFileOf(databaseFile, segment);
  if (!existsSync(file)) return null;
  const rows: AuditRow[] = [];
  for (const line of readFileSync(file, 'utf8').split('\n').filter(Boolean)) {
    const row = parsed(line);
    if (!row) break;
    rows.push(row);
  }
  return rows;
};

/** The file is complete on the disk before any row leaves the database; one left by a crash is written anew. */
const writeOut = (file: string, rows: readonly AuditRow[]): void => {
  mkdirSync(path.dirname(file), { recursive: true, mode: 0o700 });
  const handle = openSync(file, 'w', 0o600);
  try {
    for (const row of rows) writeSync(handle, `${JSON.stringify(row)}\n`);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
};

/** Most rows of one file, which are held in memory while they move. */
const mostRows = 50_000;

/** Rows before the first one that is young enough: a chain is only ever shortened from its beginning. */
const rowsBefore = async (store: Store, clinicId: string, before: number): Promise<readonly AuditRow[]> => {
  const own = eq(audit.clinicId, clinicId);
  const [young] = await store.read
    .select({ first: min(audit.sequence) })
    .from(audit)
    .where(and(own, gte(audit.at, before)));
  const [all] = await store.read
    .select({ last: max(audit.sequence) })
    .from(audit)
    .where(own);
  // The newest row stays: the chain goes on from it.
  const end = young?.first ?? all?.last ?? 0;
  return store.read
    .select()
    .from(audit)
    .where(and(own, lt(audit.sequence, end)))
    .orderBy(asc(audit.sequence))
    .limit(mostRows);
};

/**
 * Moves what is older than `before`, one file of it; null when nothing is left to move. The caller has verified
 * the chain: a broken one must not be moved.
 */
export const archiveBefore = async (
  access: Acting,
  before: number,
): Promise<(Segment & { readonly isFull: boolean }) | null> => {
  const { store, clinicId, auditKey } = access;
  const rows = await rowsBefore(store, clinicId, before);
  const last = rows.at(-1);
  if (!last) return null;
  const previous = (await segmentsOf(store, clinicId)).at(-1)?.seal ?? firstNote;
  const note = {
    clinicId,
    lastSequence: last.sequence,
    lastSeal: last.seal,
    lastAt: last.at,
    archivedAt: access.now,
  };
  const segment = { ...note, seal: noteSealOf(auditKey, note, previous) };
  writeOut(archiveFileOf(store.file, segment), rows);
  await store.write(async (tx) => {
    await tx.insert(auditSegment).values(segment);
    await auditWrite(tx, access, 'audit-archive', {
      detail: { lastSequence: last.sequence, rows: rows.length },
    });
    await tx.delete(audit).where(and(eq(audit.clinicId, clinicId), lte(audit.sequence, last.sequence)));
  });
  return { ...segment, isFull: rows.length === mostRows };
};
