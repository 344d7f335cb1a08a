/** The audit chain: writes are sealed in their own transaction, reads are queued and flushed within a second. */
import { createHash, createHmac } from 'node:crypto';
import { and, asc, desc, eq, gt } from 'drizzle-orm';
import type { Access } from './access.ts';
import { audit } from './schema/schema.ts';
import type { Db } from './store/connection.ts';
import type { Store } from './store/store.ts';

export interface Entry {
  readonly act: 'read' | 'write' | 'sign-in' | 'refused';
  readonly subject: string;
  readonly subjectId?: string | null;
  readonly patientId?: string | null;
  /** Field names, counts, digests of ids. Never a value of the record. */
  readonly detail?: Readonly<Record<string, unknown>>;
}

type Row = typeof audit.$inferSelect;

/** The bytes a seal covers, in fixed order. */
const canonical = (row: Omit<Row, 'seal'>): string =>
  JSON.stringify([
    row.clinicId,
    row.sequence,
    row.at,
    row.actorId,
    row.act,
    row.subject,
    row.subjectId,
    row.patientId,
    row.detail,
    row.previous,
  ]);

const sealOf = (key: Uint8Array, row: Omit<Row, 'seal'>): string =>
  createHmac('sha256', key).update(canonical(row)).digest('hex');

/** What the first row of a chain follows. */
const root = '0'.repeat(64);

/** Adds a sealed row inside the caller's transaction. */
export const sealed = async (tx: Db, access: Access, entry: Entry): Promise<void> => {
  const [last] = await tx
    .select({ sequence: audit.sequence, seal: audit.seal })
    .from(audit)
    .where(eq(audit.clinicId, access.clinicId))
    .orderBy(desc(audit.sequence))
    .limit(1);
  const row: Omit<Row, 'seal'> = {
    clinicId: access.clinicId,
    sequence: (last?.sequence ?? 0) + 1,
    at: access.now,
    actorId: access.actorId,
    act: entry.act,
    subject: entry.subject,
    subjectId: entry.subjectId ?? null,
    patientId: entry.patientId ?? null,
    detail: entry.detail ?? {},
    previous: last?.seal ?? root,
  };
  await tx.insert(audit).values({ ...row, seal: sealOf(access.auditKey, row) });
};

interface Pending {
  readonly access: Access;
  readonly entry: Entry;
}

const queues = new WeakMap<Store, { pending: Pending[]; timer: NodeJS.Timeout | null }>();

const queueOf = (store: Store) => {
  const known = queues.get(store);
  if (known) return known;
  const fresh = { pending: [] as Pending[], timer: null as NodeJS.Timeout | null };
  queues.set(store, fresh);
  return fresh;
};

/** Writes all queued read rows of a store in one transaction. */
export const flushReads = async (store: Store): Promise<number> => {
  const queue = queueOf(store);
  if (queue.timer) clearTimeout(queue.timer);
  queue.timer = null;
  const batch = queue.pending.splice(0);
  if (batch.length === 0) return 0;
  await store.write(async (tx) => {
    for (const { access, entry } of batch) await sealed(tx, access, entry);
  });
  return batch.length;
};

/** Notes that a record or list was opened. A crash may lose up to a second of these rows, never of writes. */
export const noteRead = (access: Access, entry: Omit<Entry, 'act'>): void => {
  const queue = queueOf(access.store);
  queue.pending.push({ access, entry: { ...entry, act: 'read' } });
  if (queue.timer) return;
  queue.timer = setTimeout(() => {
    flushReads(access.store).catch(() => undefined);
  }, 500);
  queue.timer.unref();
};

/** Digest of the ids a list page showed, so that a row can be checked without holding them. */
export const digestOfIds = (ids: readonly string[]): string =>
  createHash('sha256').update(ids.join('\n')).digest('hex').slice(0, 32);

export type Verdict =
  | { readonly ok: true; readonly rows: number }
  | { readonly ok: false; readonly sequence: number; readonly finding: string };

/** Walks a clinic's chain and names the first row that does not hold. */
export const verifyChain = async (store: Store, key: Uint8Array, clinicId: string): Promise<Verdict> => {
  let previous = root;
  let expected = 1;
  for (;;) {
    const page = await store.read
      .select()
      .from(audit)
      .where(and(eq(audit.clinicId, clinicId), gt(audit.sequence, expected - 1)))
      .orderBy(asc(audit.sequence))
      .limit(2000);
    for (const row of page) {
      const { seal, ...rest } = row;
      if (row.sequence !== expected) {
        return { ok: false, sequence: expected, finding: 'A row is missing or out of order.' };
      }
      if (row.previous !== previous) {
        return { ok: false, sequence: row.sequence, finding: 'The row does not follow the one before it.' };
      }
      if (sealOf(key, rest) !== seal) {
        return { ok: false, sequence: row.sequence, finding: 'The row was changed after it was sealed.' };
      }
      previous = seal;
      expected += 1;
    }
    if (page.length < 2000) return { ok: true, rows: expected - 1 };
  }
};

/** The last row of a chain, for heads kept outside the file. */
export const chainHead = async (
  store: Store,
  clinicId: string,
): Promise<{ sequence: number; seal: string } | null> => {
  const [last] = await store.read
    .select({ sequence: audit.sequence, seal: audit.seal })
    .from(audit)
    .where(eq(audit.clinicId, clinicId))
    .orderBy(desc(audit.sequence))
    .limit(1);
  return last ?? null;
};
