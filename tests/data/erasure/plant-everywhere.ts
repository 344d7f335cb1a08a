/** A mark in every column that is said to hold words about a person, to be looked for afterwards. */
import { getTableName } from 'drizzle-orm';
import { getTableConfig, type SQLiteTable } from 'drizzle-orm/sqlite-core';
import type { Store } from '#data/database/store.ts';
import { appendOnlyTables } from '#data/schema/kit.ts';
import { triggersOfSchema } from '#data/schema/triggers.ts';
import { actorNames, goesWithPerson, wordsAboutPeople } from '#data/schema/words-about-people.ts';

type Client = Store['writer']['client'];

/** A row of a table for one person, of any content: constraints are off while marks are planted. */
const anyRow = (client: Client, table: SQLiteTable, patientId: string): void => {
  const cells = getTableConfig(table).columns.map((column): [string, string | number] => {
    if (column.name === 'patient_id') return [column.name, patientId];
    if (column.name === 'clinic_id') return [column.name, 'a'];
    if (column.getSQLType() !== 'text') return [column.name, 1];
    return [column.name, column.columnType === 'SQLiteCustomColumn' ? '[]' : 'any'];
  });
  const names = cells.map(([name]) => name);
  client
    .prepare(`INSERT INTO ${getTableName(table)} (${names}) VALUES (${names.map(() => '?')})`)
    .run(...cells.map(([, value]) => value));
};

/** Every listed column of one person says a mark, in each row there is, and in one where there was none. */
export const plantEverywhere = (store: Store, patientId: string, mark: string): void => {
  const { client } = store.writer;
  const all = <R>(sql: string): readonly R[] => client.prepare(sql).all(patientId) as R[];
  for (const { name } of triggersOfSchema()) client.exec(`DROP TRIGGER ${name}`);
  client.pragma('foreign_keys = OFF');
  client.pragma('ignore_check_constraints = ON');
  const [account] = all<{ id: string }>('SELECT id FROM auth_user WHERE patient_id = ?');
  for (const table of appendOnlyTables.keys()) {
    const { name, columns } = getTableConfig(table);
    const has = new Set(columns.map((column) => column.name));
    if (!has.has('patient_id') || name === 'audit' || goesWithPerson.includes(name)) continue;
    if (all(`SELECT 1 FROM ${name} WHERE patient_id = ?`).length === 0) anyRow(client, table, patientId);
    const set = (column: string, text: string) =>
      client.prepare(`UPDATE ${name} SET ${column} = ? WHERE patient_id = ?`).run(text, patientId);
    const { words = [], json = {} } = wordsAboutPeople[name] ?? {};
    for (const column of words) set(column, `${mark} ${column}`);
    for (const [column, under] of Object.entries(json)) {
      const key = under === 'every' ? 'any' : under[0]!;
      set(column, JSON.stringify([{ kept: 1, [key]: `${mark} one`, deep: { [key]: [`${mark} two`] } }]));
    }
    for (const [column, by] of Object.entries(actorNames))
      if (has.has(column) && has.has(by)) {
        set(column, `${mark} own name`);
        set(by, account!.id);
      }
  }
  const mine = `WHERE patient_id = '${patientId}'`;
  for (const column of ['given_name', 'family_name', 'phone', 'email', 'patient_number'])
    client.exec(`UPDATE patient_identity SET ${column} = '${mark} ${column}' ${mine}`);
  client.exec(
    `UPDATE patient_detail SET value = '${mark} value', reason = '${mark}', by_name = '${mark}' ${mine}`,
  );
  client.exec(`UPDATE auth_user SET name = '${mark} name', email = '${mark}@x' ${mine}`);
  client.exec(`UPDATE auth_session SET user_agent = '${mark} browser' WHERE user_id = '${account!.id}'`);
  for (const { sql } of triggersOfSchema()) client.exec(sql);
  client.pragma('foreign_keys = ON');
};
