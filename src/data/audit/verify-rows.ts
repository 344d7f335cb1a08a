/**
 * Compares the rows of the append-only tables with the digests that the audit holds of them: a row that was
 * changed, taken away or put in behind the product shows, whatever became of the triggers.
 */
import { asc, sql } from 'drizzle-orm';
import type { Store } from '../database/store.ts';
import { audit } from '../schema/schema.ts';
import { archivedRows, segmentsOf } from './audit-archive.ts';
import { digestedTables, mayLeave } from './digested-tables.ts';
import { digestOfRow, digestsIn, type WrittenRows } from './row-digests.ts';
import { type AuditKeys, type AuditRow, keysIn } from './seal.ts';

export interface RowsVerdict {
  /** Rows that are as they were written. */
  readonly rows: number;
  /** The first of what does not hold, in words. */
  readonly findings: readonly string[];
  readonly wrong: number;
  /** Rows that nothing is known of, since audit rows of their time are archived and not at hand. */
  readonly unknown: number;
}

const mostTold = 20;
const pageSize = 2000;

type Spoken = Pick<AuditRow, 'clinicId' | 'sequence' | 'detail'>;

/** Digest to the audit row that holds it, for each table. */
type Known = Map<string, Map<string, Spoken>>;

const takeIn = (known: Known, gone: WrittenRows[], row: Spoken): void => {
  const { written = {}, erased } = row.detail as {
    readonly written?: WrittenRows;
    readonly erased?: WrittenRows;
  };
  if (erased) gone.push(erased);
  for (const [table, digests] of Object.entries(written)) {
    const ofTable = known.get(table) ?? new Map<string, Spoken>();
    for (const digest of digestsIn(String(digests))) ofTable.set(digest, row);
    known.set(table, ofTable);
  }
};

/** Digests of rows as they were before a person was erased: no such row may be there any more. */
const leaveOut = (known: Known, gone: readonly WrittenRows[]): void => {
  for (const erased of gone)
    for (const [table, digests] of Object.entries(erased))
      for (const digest of digestsIn(String(digests))) known.get(table)?.delete(digest);
};

const takeStored = async (known: Known, gone: WrittenRows[], store: Store): Promise<void> => {
  for (let place = 0; ; ) {
    const page = await store.read
      .select({
        place: sql<number>`rowid`,
        clinicId: audit.clinicId,
        sequence: audit.sequence,
        detail: audit.detail,
      })
      .from(audit)
      .where(sql`rowid > ${place} AND instr(${audit.detail}, '"written"') > 0`)
      .orderBy(asc(sql`rowid`))
      .limit(pageSize);
    for (const { place: _, ...row } of page) takeIn(known, gone, row);
    if (page.length < pageSize) return;
    place = page.at(-1)!.place;
  }
};

/** Answers whether all archived rows were at hand. */
const takeArchived = async (
  known: Known,
  gone: WrittenRows[],
  store: Store,
  clinicIds: readonly string[],
): Promise<boolean> => {
  let isWhole = true;
  for (const clinicId of clinicIds) {
    for (const segment of await segmentsOf(store, clinicId)) {
      const rows = archivedRows(store.file, segment);
      if (!rows) isWhole = false;
      for (const row of rows ?? []) takeIn(known, gone, row);
    }
  }
  return isWhole;
};

const keyColumnsOf = (store: Store, table: string): readonly string[] =>
  (store.reader.client.pragma(`table_info(${table})`) as { name: string; pk: number }[])
    .filter(({ pk }) => pk > 0)
    .map(({ name }) => name);

type Row = Readonly<Record<string, unknown>>;

function* rowsOf(store: Store, table: string): Generator<Row> {
  const page = store.reader.client.prepare(
    `SELECT rowid AS "the place", * FROM ${table} WHERE rowid > ? ORDER BY rowid LIMIT ${pageSize}`,
  );
  for (let place = Number.MIN_SAFE_INTEGER; ; ) {
    const rows = page.all(place) as readonly Row[];
    for (const { 'the place': _, ...row } of rows) yield row;
    if (rows.length < pageSize) return;
    place = Number(rows.at(-1)!['the place']);
  }
}

interface Count {
  rows: number;
  readonly findings: string[];
  wrong: number;
  unknown: number;
}

const found = (count: Count, finding: string): void => {
  count.wrong += 1;
  if (count.findings.length < mostTold) count.findings.push(finding);
};

const compareTable = (store: Store, keys: AuditKeys, table: string, known: Known, isWhole: boolean) => {
  const count: Count = { rows: 0, findings: [], wrong: 0, unknown: 0 };
  const left = known.get(table) ?? new Map<string, Spoken>();
  const keyColumns = keyColumnsOf(store, table);
  for (const row of rowsOf(store, table)) {
    if (keysIn(keys).some((key) => left.delete(digestOfRow(key, { table, row })))) count.rows += 1;
    else if (!isWhole) count.unknown += 1;
    else {
      const name = keyColumns.map((column) => String(row[column])).join(' ');
      found(
        count,
        `${table}, row ${name}: it is not as the product wrote it, or the product did not write it`,
      );
    }
  }
  if (mayLeave.has(table)) return count;
  for (const { clinicId, sequence } of left.values()) {
    found(
      count,
      `${table}: a row that row ${sequence} of the audit of ${clinicId} speaks of is changed or gone`,
    );
  }
  return count;
};

const tablesHere = (store: Store): readonly string[] => {
  const here = store.reader.client.prepare("SELECT name FROM sqlite_master WHERE type = 'table'").all();
  const names = new Set((here as { name: string }[]).map(({ name }) => name));
  return [...digestedTables].filter((name) => names.has(name)).sort();
};

/** Compares every row of every such table; `clinicIds` are those whose archive is looked for. */
export const verifyRows = async (
  store: Store,
  keys: AuditKeys,
  clinicIds: readonly string[],
): Promise<RowsVerdict> => {
  const known: Known = new Map();
  const gone: WrittenRows[] = [];
  await takeStored(known, gone, store);
  const isWhole = await takeArchived(known, gone, store, clinicIds);
  leaveOut(known, gone);
  const counts = tablesHere(store).map((table) => compareTable(store, keys, table, known, isWhole));
  const sum = (field: 'rows' | 'wrong' | 'unknown') =>
    counts.reduce((total, count) => total + count[field], 0);
  return {
    rows: sum('rows'),
    findings: counts.flatMap(({ findings }) => findings).slice(0, mostTold),
    wrong: sum('wrong'),
    unknown: sum('unknown'),
  };
};
