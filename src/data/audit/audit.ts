/** The audit chain: writes are sealed in their own transaction, reads are queued and flushed within a second. */
import { createHash } from 'node:crypto';
import { desc } from 'drizzle-orm';
import type { Access } from '../access.ts';
import type { Db } from '../database/connection.ts';
import { insertRows } from '../database/insert-rows.ts';
import { perStore } from '../database/per-store.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import type { Store } from '../database/store.ts';
import { audit } from '../schema/schema.ts';
import { digestsOf, together, type WrittenRows } from './row-digests.ts';
import { type AuditRow, chainRoot, sealOf } from './seal.ts';

export interface Entry {
  readonly act: 'read' | 'write' | 'sign-in' | 'refused';
  readonly subject: string;
  readonly subjectId?: string | null;
  readonly patientId?: string | null;
  /** Field names, counts, digests of ids. Never a value of the record. */
  readonly detail?: Readonly<Record<string, unknown>>;
}

/** What a row needs to know of who acts. */
export type Acting = Pick<Access, 'store' | 'auditKey' | 'clinicId' | 'actorId' | 'now'>;

const lastOfChain = prepared((db) =>
  db
    .select({ sequence: audit.sequence, seal: audit.seal })
    .from(audit)
    .where(ofClinic(audit))
    .orderBy(desc(audit.sequence))
    .limit(1),
);

/**
 * A text as the file will give it back. The driver ends a text at NUL and reads half a character as
 * another one; a seal over anything else would call the row changed for ever.
 */
const asStored = <T extends string | null>(text: T): T =>
  (text?.replace(/\0|\p{Surrogate}/gu, '\uFFFD') ?? null) as T;

interface Told {
  readonly tx: Db;
  readonly access: Acting;
  readonly entry: Entry;
  /** Digests of what was put into append-only tables since the row before it was said. */
  readonly written: WrittenRows;
}

/** What is said of a write, with digests of its rows: a row of the record changed behind the audit shows. */
const detailOf = ({ entry, written }: Told): AuditRow['detail'] =>
  Object.keys(written).length === 0 ? (entry.detail ?? {}) : { ...entry.detail, written };

/** Worked out as soon as it is said: a write of very many rows then holds none of them to its end. */
const writtenSince = ({ auditKey, store }: Acting): WrittenRows => digestsOf(auditKey, store.takeInserted());

const sealedAfter = (last: Pick<AuditRow, 'sequence' | 'seal'> | undefined, told: Told) => {
  const { access, entry } = told;
  const row: Omit<AuditRow, 'seal'> = {
    clinicId: access.clinicId,
    sequence: (last?.sequence ?? 0) + 1,
    at: access.now,
    actorId: asStored(access.actorId),
    act: entry.act,
    subject: asStored(entry.subject),
    subjectId: asStored(entry.subjectId ?? null),
    patientId: asStored(entry.patientId ?? null),
    detail: detailOf(told),
    previous: last?.seal ?? chainRoot,
  };
  return { ...row, seal: sealOf(access.auditKey, row) };
};

/** Rows written by one statement; each number of rows has a text of its own, which is kept. */
const mostAtOnce = 40;

/** Seals what one transaction did, each row on the one before it, and writes it. */
const sealTogether = async (told: readonly Told[]): Promise<void> => {
  const heads = new Map<string, Pick<AuditRow, 'sequence' | 'seal'> | undefined>();
  const rows: AuditRow[] = [];
  for (const [place, said] of told.entries()) {
    const { clinicId } = said.access;
    const isLast = place === told.length - 1;
    const one = isLast ? { ...said, written: together(said.written, writtenSince(said.access)) } : said;
    if (!heads.has(clinicId)) heads.set(clinicId, (await lastOfChain(one.tx, { clinicId }))[0]);
    const row = sealedAfter(heads.get(clinicId), one);
    heads.set(clinicId, row);
    rows.push(row);
  }
  for (let from = 0; from < rows.length; from += mostAtOnce)
    insertRows(told[0]!.tx, audit, rows.slice(from, from + mostAtOnce));
};

/** Adds a sealed row inside the caller's transaction; the rows of a transaction are written just before it commits. */
export const appendAudit = async (tx: Db, access: Acting, entry: Entry): Promise<void> =>
  access.store.collect('audit', { tx, access, entry, written: writtenSince(access) }, sealTogether);

/** The same for a row that was written, by the name of what it holds. */
export const auditWrite = (
  tx: Db,
  access: Acting,
  subject: string,
  about: Omit<Entry, 'act' | 'subject'> = {},
): Promise<void> => appendAudit(tx, access, { act: 'write', subject, ...about });

interface Pending {
  readonly access: Acting;
  readonly entry: Entry;
}

interface Queue {
  readonly pending: Pending[];
  timer: NodeJS.Timeout | null;
  /** Times in a row that the rows could not be written. */
  failures: number;
  onFailure: (error: unknown, waiting: number) => void;
  /** Throws the reason why nothing may be sealed; asked inside the write. */
  requireKey?: () => void;
}

const queueOf = perStore(
  'audit-queue',
  (): Queue => ({ pending: [], timer: null, failures: 0, onFailure: () => undefined }),
);

/** Asked inside each write of queued rows, before they are sealed: it throws where the key is the file's no more. */
export const requireKeyAtFlush = (store: Store, require: () => void): void => {
  queueOf(store).requireKey = require;
};

/** Told each time that queued rows could not be written, with how many wait. */
export const onAuditFailure = (store: Store, told: Queue['onFailure']): void => {
  queueOf(store).onFailure = told;
};

/** Whether what is read now may not come into the audit: rows wait that could not be written. */
export const isAuditFailing = (store: Store): boolean => queueOf(store).failures > 0;

/** Writes all queued read rows of a store in one transaction; what cannot be written waits on. */
export const flushReads = async (store: Store): Promise<number> => {
  const queue = queueOf(store);
  if (queue.timer) clearTimeout(queue.timer);
  queue.timer = null;
  const batch = queue.pending.splice(0);
  if (batch.length === 0) return 0;
  try {
    await store.write(async (tx) => {
      queue.requireKey?.();
      for (const { access, entry } of batch) await appendAudit(tx, access, entry);
    });
    queue.failures = 0;
  } catch (error) {
    queue.pending.unshift(...batch);
    queue.failures += 1;
    queue.onFailure(error, queue.pending.length);
    throw error;
  }
  return batch.length;
};

const soon = 500;
/** After a failure; until then nothing more is read. */
const later = 2000;

const flushIn = (store: Store, queue: Queue, milliseconds: number): void => {
  if (queue.timer) return;
  queue.timer = setTimeout(() => {
    flushReads(store).catch(() => {
      if (store.writer.client.open) flushIn(store, queue, later);
    });
  }, milliseconds);
  queue.timer.unref();
};

/** Notes what wrote nothing itself. A crash may lose up to a second of these rows, never of writes. */
const noteSoon = (access: Acting, entry: Entry): void => {
  const queue = queueOf(access.store);
  queue.pending.push({ access, entry });
  flushIn(access.store, queue, soon);
};

/** Notes that a record or list was opened. */
export const noteRead = (access: Acting, entry: Omit<Entry, 'act'>): void =>
  noteSoon(access, { ...entry, act: 'read' });

/** Notes that somebody asked for what is not theirs. */
export const noteRefused = (access: Acting, entry: Omit<Entry, 'act'>): void =>
  noteSoon(access, { ...entry, act: 'refused' });

/** Notes a sign-in, a sign-out or a change of what somebody signs in with. */
export const noteSignIn = (access: Acting, entry: Omit<Entry, 'act'>): void =>
  noteSoon(access, { ...entry, act: 'sign-in' });

/** Digest of the ids a list page showed, so that a row can be checked without holding them. */
export const digestOfIds = (ids: readonly string[]): string =>
  createHash('sha256').update(ids.join('\n')).digest('hex').slice(0, 32);
