/**
 * Makes three years of daily answers of a demo patient's twelve weeks: the same rows again and again,
 * each time twelve weeks earlier. Only for looking at how a long record is drawn.
 */
import { openStore } from '#data/open-store.ts';

const blockDays = 84;
const dayMs = 86_400_000;
/** In the id of a repeated row; no id of a phone or of this product holds it. */
const mark = '~';

interface Table {
  readonly name: string;
  /** Rows of the patient's last twelve weeks; `?` is the patient, then the first day. */
  readonly where: string;
  readonly ids: readonly string[];
}

const own = `patient_id = ? AND day > ? AND id NOT LIKE '%${mark}%'`;
const tables: readonly Table[] = [
  { name: 'training_session', where: own, ids: ['id', 'entry_id', 'amends'] },
  {
    name: 'set_log',
    where: `session_id IN (SELECT id FROM training_session WHERE ${own})`,
    ids: ['id', 'session_id'],
  },
  {
    name: 'session_joint',
    where: `session_id IN (SELECT id FROM training_session WHERE ${own})`,
    ids: ['session_id'],
  },
  { name: 'morning', where: own, ids: ['id', 'entry_id', 'amends'] },
  {
    name: 'morning_joint',
    where: `morning_id IN (SELECT id FROM morning WHERE ${own})`,
    ids: ['morning_id'],
  },
  { name: 'decision', where: own, ids: ['id', 'session_id', 'morning_id'] },
];

const earlier = ({ ids }: Table, column: string, block: number): string => {
  if (ids.includes(column)) return `${column} || '${mark}${block}'`;
  if (column === 'day') return `date(day, '-${block * blockDays} days')`;
  return column.endsWith('_at') ? `${column} - ${block * blockDays * dayMs}` : column;
};

/** Returns the number of rows the record was lengthened by. */
export const lengthenRecord = (file: string, patientId: string, days: number): number => {
  const store = openStore(file);
  const { client } = store.writer;
  client.pragma('foreign_keys = OFF');
  try {
    const newest = client
      .prepare('SELECT max(day) AS day FROM morning WHERE patient_id = ?')
      .get(patientId) as { readonly day: string };
    const first = new Date(Date.parse(newest.day) - blockDays * dayMs).toISOString().slice(0, 10);
    const columnsOf = ({ name }: Table) =>
      (client.pragma(`table_info(${name})`) as { readonly name: string }[]).map((column) => column.name);
    const withColumns = tables.map((table) => ({ table, columns: columnsOf(table) }));
    let rows = 0;
    client.exec('BEGIN');
    for (let block = 1; block * blockDays < days; block++) {
      for (const { table, columns } of withColumns) {
        const values = columns.map((column) => earlier(table, column, block));
        rows += client
          .prepare(
            `INSERT INTO ${table.name} (${columns.join(', ')}) SELECT ${values.join(', ')} FROM ${table.name} WHERE ${table.where}`,
          )
          .run(patientId, first).changes;
      }
    }
    client.exec('COMMIT');
    return rows;
  } finally {
    store.close();
  }
};
