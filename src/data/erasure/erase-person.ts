/**
 * Erasing a person: the words and names that stand about the patient are written over, the identity, the sign-in
 * and what is only worked out are deleted, and the audit says of each row what it was and what it is now. Figures
 * and days stay, belonging to an id that leads to nobody. The one place where rows of append-only tables change:
 * with the server stopped, in one transaction that puts the triggers back as they were.
 */
import { getTableName } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { digestOfRow } from '../audit/row-digests.ts';
import { type AuditKeys, keysIn } from '../audit/seal.ts';
import { triggerFindings } from '../audit/verify-triggers.ts';
import type { Store } from '../database/store.ts';
import { appendOnlyTables } from '../schema/kit.ts';
import { triggersOfSchema } from '../schema/triggers.ts';
import {
  actorNames,
  goesWithPerson,
  type WordsOfTable,
  wordsAboutPeople,
} from '../schema/words-about-people.ts';
import { rebuildWorklist } from '../worklist/worklist-items.ts';

/** Stands where words were: what was never written stays empty, so that the two are told apart. */
const mark = '(erased)';

type Cell = string | number | null;
type Row = Readonly<Record<string, Cell>>;

const without = (value: unknown, under: 'every' | readonly string[], isUnder: boolean): unknown => {
  if (typeof value === 'string') return isUnder ? mark : value;
  if (Array.isArray(value)) return value.map((one) => without(one, under, isUnder));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, one]) => [
      name,
      without(one, under, isUnder || (under !== 'every' && under.includes(name))),
    ]),
  );
};

const erasedJson = (text: string, under: 'every' | readonly string[]): string =>
  JSON.stringify(without(JSON.parse(text), under, under === 'every'));

/** What changes in a row; `accounts` are the patient's own. */
const changesOf = (row: Row, { words = [], json = {} }: WordsOfTable, accounts: readonly string[]): Row => {
  const changes: Record<string, Cell> = {};
  for (const name of words) if (row[name] != null) changes[name] = mark;
  for (const [name, under] of Object.entries(json))
    if (row[name] != null) changes[name] = erasedJson(String(row[name]), under);
  for (const [name, by] of Object.entries(actorNames))
    if (row[name] != null && accounts.includes(String(row[by]))) changes[name] = mark;
  return Object.fromEntries(Object.entries(changes).filter(([name, value]) => row[name] !== value));
};

interface Rewritten {
  readonly erased: Record<string, string>;
  readonly written: Record<string, string>;
  rows: number;
}

interface Erasing {
  readonly store: Store;
  readonly auditKey: Uint8Array;
  readonly auditKeys: AuditKeys;
  readonly patientId: string;
  readonly accounts: readonly string[];
}

const rewrite = (at: Erasing, table: string, found: WordsOfTable, told: Rewritten): void => {
  const rows = at.store.writer.client
    .prepare(`SELECT rowid AS "the place", * FROM ${table} WHERE patient_id = ?`)
    .all(at.patientId) as readonly Row[];
  for (const { 'the place': place, ...row } of rows) {
    const changes = changesOf(row, found, at.accounts);
    const names = Object.keys(changes);
    if (names.length === 0) continue;
    const set = names.map((name) => `${name} = ?`).join(', ');
    run(at.store, `UPDATE ${table} SET ${set} WHERE rowid = ?`, ...Object.values(changes), place!);
    const digest = (one: Row) => digestOfRow(at.auditKey, { table, row: one });
    // Under each key: whichever was in use when the row was written.
    for (const key of keysIn(at.auditKeys))
      told.erased[table] = (told.erased[table] ?? '') + digestOfRow(key, { table, row });
    told.written[table] = (told.written[table] ?? '') + digest({ ...row, ...changes });
    told.rows += 1;
  }
};

const hasPatient = ({ writer }: Store, table: string): boolean =>
  (writer.client.pragma(`table_info(${table})`) as { name: string }[]).some(
    ({ name }) => name === 'patient_id',
  );

/** Append-only tables beside a patient; the audit holds ids and names of fields alone. */
const tablesOf = (store: Store): readonly string[] =>
  [...appendOnlyTables.keys()]
    .map((table) => getTableName(table))
    .filter((table) => table !== 'audit' && !goesWithPerson.includes(table) && hasPatient(store, table));

/** Runs `work` while rows of these tables may change; what stands in the file afterwards is as the schema has it. */
const withOpen = (store: Store, tables: readonly string[], work: () => void): void => {
  const { client } = store.writer;
  const closing = triggersOfSchema().filter(({ name }) =>
    tables.some((table) => name === `${table}_no_update`),
  );
  for (const { name } of closing) client.exec(`DROP TRIGGER ${name}`);
  work();
  for (const { sql } of closing) client.exec(sql);
};

const run = (store: Store, sql: string, ...values: readonly Cell[]): void => {
  store.writer.statements.prepare(sql).run(...values);
};

const accountsOf = (store: Store, patientId: string): readonly string[] => {
  const rows = store.writer.client.prepare('SELECT id FROM auth_user WHERE patient_id = ?').all(patientId);
  return (rows as { id: string }[]).map(({ id }) => id);
};

const deleteRest = ({ store, patientId, accounts }: Erasing): void => {
  for (const account of accounts) run(store, 'DELETE FROM auth_verification WHERE value = ?', account);
  // In this order: the versions of who somebody is may go once the identity has.
  for (const table of goesWithPerson) run(store, `DELETE FROM ${table} WHERE patient_id = ?`, patientId);
};

export type Because = 'asked' | 'retention';

/** Erases all records of one person together. Answers how many rows have lost words. */
export const erasePerson = (
  access: Access,
  patientIds: readonly string[],
  because: Because,
  auditKeys: AuditKeys = access.auditKey,
): Promise<number> =>
  access.store.write(async (tx) => {
    const { store, auditKey } = access;
    const tables = tablesOf(store);
    let rows = 0;
    for (const patientId of patientIds) {
      const at = { store, auditKey, auditKeys, patientId, accounts: accountsOf(store, patientId) };
      const told: Rewritten = { erased: {}, written: {}, rows: 0 };
      withOpen(store, tables, () => {
        for (const table of tables) rewrite(at, table, wordsAboutPeople[table] ?? {}, told);
      });
      deleteRest(at);
      rows += told.rows;
      await auditWrite(tx, access, 'erasure', {
        subjectId: patientId,
        patientId,
        detail: { because, ...told },
      });
    }
    await rebuildWorklist(access);
    const [finding] = triggerFindings({ reader: store.writer });
    if (finding) throw new Error(`The triggers would not be as before: ${finding}.`);
    return rows;
  });

/** Makes the file and what stands beside it anew, so that nothing of what was deleted is left between its pages. */
export const leaveNoTrace = ({ writer }: Store): void => {
  writer.client.exec('VACUUM');
  writer.client.pragma('wal_checkpoint(TRUNCATE)');
};
