/** What one save wrote, found in the file afterwards, and the same rows written again with nothing but the driver. */
import type { Client, Value } from '../group/raw-rows.ts';

/** In the order in which rows may name each other. */
const tables = [
  'training_session',
  'set_log',
  'session_joint',
  'baseline',
  'decision',
  'prescription',
  'signature',
  'prescription_end',
  'proposal',
  'audit',
] as const;

export interface WrittenRows {
  readonly table: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Value[])[];
}

export interface Marks {
  readonly last: ReadonlyMap<string, number>;
  /** The patient's part of the worklist as it stood; rows there are replaced, not added. */
  readonly worklistItems: string;
}

const worklistItemsOf = (client: Client, patient: string): WrittenRows =>
  rowsFrom(client, 'worklist_item', 'patient_id = ?', patient);

export const marksOf = (client: Client, patient: string): Marks => ({
  worklistItems: JSON.stringify(worklistItemsOf(client, patient)),
  last: new Map(
    tables.map((table) => {
      const [row] = client.prepare(`SELECT max(rowid) AS last FROM ${table}`).all() as {
        last: number | null;
      }[];
      return [table, row?.last ?? 0];
    }),
  ),
});

const rowsFrom = (client: Client, table: string, where: string, value: Value): WrittenRows => {
  const found = client.prepare(`SELECT * FROM ${table} WHERE ${where}`).all(value) as Record<string, Value>[];
  const columns = Object.keys(found[0] ?? {});
  return { table, columns, rows: found.map((row) => columns.map((column) => row[column]!)) };
};

/** The worklist counts as written only where it changed. */
export const writtenSince = (client: Client, marks: Marks, patient: string): readonly WrittenRows[] => {
  const worklistItems = worklistItemsOf(client, patient);
  const added = tables.map((table) => rowsFrom(client, table, 'rowid > ?', marks.last.get(table)!));
  const replaced = JSON.stringify(worklistItems) === marks.worklistItems ? [] : [worklistItems];
  return [...added, ...replaced].filter((written) => written.rows.length > 0);
};

type Insert = { readonly run: (values: readonly Value[]) => unknown };

/** One statement for each table, prepared beforehand, in one transaction with the same durability. */
export const rawWriter = (client: Client) => {
  const kept = new Map<string, Insert>();
  const insertOf = ({ table, columns, rows }: WrittenRows): Insert => {
    const key = `${table} ${rows.length}`;
    let insert = kept.get(key);
    if (!insert) {
      const one = `(${columns.map(() => '?').join(', ')})`;
      const values = rows.map(() => one).join(', ');
      insert = client.prepare(`INSERT INTO ${table} (${columns.join(', ')}) VALUES ${values}`) as Insert;
      kept.set(key, insert);
    }
    return insert;
  };
  const clear = client.prepare('DELETE FROM worklist_item WHERE patient_id = ?');
  return (written: readonly WrittenRows[], patient: string) => {
    const inserts = written.map((rows) => [insertOf(rows), rows.rows.flat()] as const);
    const isReplaced = written.some((rows) => rows.table === 'worklist_item');
    return (): void => {
      client.exec('BEGIN IMMEDIATE');
      if (isReplaced) clear.run(patient);
      for (const [insert, values] of inserts) insert.run(values);
      client.exec('COMMIT');
    };
  };
};
