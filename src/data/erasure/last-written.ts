/** When something was last written of each patient of a clinic: care of which nobody kept an episode ended then at the earliest. */
import { getTableName } from 'drizzle-orm';
import { getTableConfig } from 'drizzle-orm/sqlite-core';
import type { Access } from '../access.ts';
import { appendOnlyTables } from '../schema/kit.ts';

/** When a row was written, by the clock of the server; a row has the first of these that its table has. */
const writtenAt = [
  ...['recorded_at', 'arrived_at', 'signed_at', 'ended_at', 'lifted_at', 'evaluated_at', 'made_at'],
  ...['answered_at', 'sent_at', 'entered_at', 'began_at', 'seen_at', 'withdrawn_at', 'handed_at', 'done_at'],
] as const;

const questions = (): readonly string[] =>
  [...appendOnlyTables.keys()].flatMap((table) => {
    const names = new Set(getTableConfig(table).columns.map(({ name }) => name));
    const column = writtenAt.find((name) => names.has(name));
    return names.has('patient_id') && column
      ? [
          `SELECT patient_id AS id, max(${column}) AS at FROM ${getTableName(table)} WHERE clinic_id = ? GROUP BY 1`,
        ]
      : [];
  });

/** Everybody who still has an identity; whoever nothing was written of, since the record was opened. */
export const lastWritten = ({ store, clinicId }: Access): ReadonlyMap<string, number> => {
  const all = (sql: string) =>
    store.reader.client.prepare(sql).all(clinicId) as { readonly id: string; readonly at: number }[];
  const known = all(
    'SELECT p.id AS id, p.created_at AS at FROM patient p JOIN patient_identity i ON i.patient_id = p.id WHERE p.clinic_id = ?',
  );
  const last = new Map(known.map(({ id, at }) => [id, at]));
  for (const { id, at } of questions().flatMap(all)) {
    const before = last.get(id);
    if (before !== undefined && at > before) last.set(id, at);
  }
  return last;
};
