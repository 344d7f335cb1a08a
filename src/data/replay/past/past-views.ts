/**
 * The file as it stood at a past instant, as views that stand before its tables: each shows the rows that had arrived
 * by then. Rows stay as they were recorded, so for most tables the column that says when is all there is to know; the
 * few rows that are written over are put back to what stood then. Whoever reads through them asks as ever.
 */
import { getTableColumns, is } from 'drizzle-orm';
import { getTableConfig, SQLiteTable } from 'drizzle-orm/sqlite-core';
import * as schema from '../../schema/schema.ts';

/** Columns that say when a row came; a table goes by the first of them that it has. */
const arrivals = [
  'recorded_at',
  'arrived_at',
  'corrected_at',
  'evaluated_at',
  'withdrawn_at',
  'lifted_at',
  'seen_at',
  'signed_at',
  'ended_at',
  'handed_at',
  'answered_at',
  'changed_at',
  'made_at',
  'sent_at',
  'done_at',
  'began_at',
  'opened_at',
  'enrolled_at',
  'created_at',
  'at',
] as const;

/** Rows that come with a row of another table. */
const parents: Readonly<Record<string, readonly [column: string, table: string]>> = {
  set_log: ['session_id', 'training_session'],
  session_joint: ['session_id', 'training_session'],
  morning_joint: ['morning_id', 'morning'],
  medicine_change: ['event_id', 'care_event'],
  imported_row: ['batch_id', 'import_batch'],
  patient_identity: ['patient_id', 'patient'],
};

/** Named by what came; of no time of their own. */
const timeless: readonly string[] = ['decision_settings'];

/** Worked out from the rest, or about signing in: nothing of them was what a record said. */
const leftOut = [
  'worklist_item',
  'worklist_strip',
  'worklist_standing',
  'worklist_tally',
  'draft',
  'calendar_feed',
  'device',
  'invitation',
  'passkey',
  'sign_in_attempt',
  'key_fingerprint',
  'audit',
  'audit_segment',
  'auth_user',
  'auth_session',
  'auth_account',
  'auth_verification',
  'auth_two_factor',
] as const;

/** A version that was entered in error is left out once that was said, as everywhere. */
const detailThen = (detail: string, at: number): string =>
  `(SELECT d.value FROM main.patient_detail d WHERE d.patient_id = t.patient_id AND d.detail = '${detail}' AND d.recorded_at <= ${at}
    AND NOT (d.because = 'entered-in-error' AND d.value IS NULL)
    AND NOT EXISTS (SELECT 1 FROM main.patient_detail s WHERE s.patient_id = d.patient_id AND s.detail = d.detail AND s.strikes = d.version AND s.recorded_at <= ${at})
    ORDER BY d.version DESC LIMIT 1)`;

/** What stood before the first change since; what stands where there is none. */
const clinicThen = (column: string, detail: string, at: number): string =>
  `CASE WHEN EXISTS (SELECT 1 FROM main.clinic_detail_change c WHERE c.clinic_id = t.id AND c.detail = '${detail}' AND c.recorded_at > ${at})
    THEN (SELECT c.before FROM main.clinic_detail_change c WHERE c.clinic_id = t.id AND c.detail = '${detail}' AND c.recorded_at > ${at} ORDER BY c.recorded_at, c.rowid LIMIT 1)
    ELSE t.${column} END`;

type Rewritten = Readonly<Record<string, (at: number) => string>>;

const rewritten: Readonly<Record<string, Rewritten>> = {
  patient_identity: {
    given_name: (at) => detailThen('givenName', at),
    family_name: (at) => detailThen('familyName', at),
    birth_day: (at) => detailThen('birthDay', at),
    phone: (at) => detailThen('phone', at),
    email: (at) => detailThen('email', at),
    patient_number: (at) => detailThen('patientNumber', at),
  },
  clinic: {
    name: (at) => clinicThen('name', 'name', at),
    phone: (at) => clinicThen('phone', 'phone', at),
    emergency_number: (at) => clinicThen('emergency_number', 'emergency-number', at),
    urgent_number: (at) => clinicThen('urgent_number', 'urgent-number', at),
    monitoring_hours: (at) => clinicThen('monitoring_hours', 'monitoring-hours', at),
  },
  site: {
    closed_at: (at) => `CASE WHEN t.closed_at <= ${at} THEN t.closed_at END`,
  },
};

/** How a table is read as it was: by a column of its own, with a parent, whole, not at all; null = nobody has said. */
export const arrivalOf = (table: string, columns: readonly string[]): string | null => {
  if ((leftOut as readonly string[]).includes(table)) return 'left out';
  if (timeless.includes(table)) return 'whole';
  const parent = parents[table];
  return parent ? `with ${parent[1]}` : (arrivals.find((name) => columns.includes(name)) ?? null);
};

export const tablesOfFile: ReadonlyMap<string, readonly string[]> = new Map(
  Object.values(schema as Readonly<Record<string, unknown>>).flatMap((one) =>
    is(one, SQLiteTable)
      ? [[getTableConfig(one).name, Object.values(getTableColumns(one)).map(({ name }) => name)] as const]
      : [],
  ),
);

const columnsOfParent = (table: string): readonly string[] => tablesOfFile.get(table)!;

const shownBy = (table: string, columns: readonly string[], at: number): string => {
  const arrival = arrivalOf(table, columns);
  if (arrival === null) throw new Error(`Nothing says when a row of ${table} came.`);
  if (arrival === 'left out') return '0';
  if (arrival === 'whole') return '1';
  const parent = parents[table];
  if (!parent) return `t.${arrival} <= ${at}`;
  const [column, of] = parent;
  const own = arrivals.find((name) => columnsOfParent(of).includes(name))!;
  return `EXISTS (SELECT 1 FROM main.${of} p WHERE p.id = t.${column} AND p.${own} <= ${at})`;
};

/** Left out by a view; kept as an empty table where the past is worked out into it. */
const workedOutInto = 'worklist_item';

const columnThen = (table: string, column: string, at: number): string => {
  const then = rewritten[table]?.[column];
  return then ? `${then(at)} AS "${column}"` : `t."${column}"`;
};

/** Statements that put the past before a connection; a name without its file is then the past one. */
export const pastViews = (at: number): readonly string[] => {
  if (!Number.isSafeInteger(at)) throw new Error('An instant is whole milliseconds.');
  return [...tablesOfFile].map(([table, columns]) => {
    if (table === workedOutInto)
      return `CREATE TEMP TABLE "${table}" AS SELECT * FROM main."${table}" WHERE 0`;
    const shown = columns.map((column) => columnThen(table, column, at)).join(', ');
    return `CREATE TEMP VIEW "${table}" AS SELECT t.rowid AS rowid, ${shown} FROM main."${table}" t WHERE ${shownBy(table, columns, at)}`;
  });
};
