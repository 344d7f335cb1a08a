/**
 * Every row the clinic keeps about a person, table by table, and the settings that decisions of the person rest on.
 * A table that is added later is in it by itself, unless it stands in `leftOut` with its reason.
 */
import { and, eq, getTableColumns, getTableName, type InferSelectModel, is } from 'drizzle-orm';
import { type SQLiteColumn, SQLiteTable } from 'drizzle-orm/sqlite-core';
import type { Access } from '../access.ts';
import * as schema from '../schema/schema.ts';

/** Rows about a person that are no part of the record handed on. */
export const leftOut: Readonly<Record<string, string>> = {
  audit: 'who opened the record, shown to the patient on the own page',
  auth_user: 'the sign-in, not the record',
  device: 'digests of a phone and its PIN',
  invitation: 'digests of codes that open the record',
  calendar_feed: 'the digest of an address that shows the days ahead',
  draft: 'typed and not yet recorded by anybody',
  worklist_item: 'the clinic’s worklist, worked out anew from the rows below',
};

interface Told {
  readonly name: string;
  readonly table: SQLiteTable;
  readonly clinicId: SQLiteColumn;
  readonly patientId: SQLiteColumn;
}

const exportedTables: readonly Told[] = (Object.values(schema) as unknown[]).flatMap((table) => {
  if (!is(table, SQLiteTable)) return [];
  const { clinicId, patientId } = getTableColumns(table) as Record<string, SQLiteColumn>;
  const name = getTableName(table);
  return clinicId && patientId && !leftOut[name] ? [{ name, table, clinicId, patientId }] : [];
});

type Row = Readonly<Record<string, unknown>>;

/** Rows by table, keyed as the schema names their columns. */
export type RecordTables = Readonly<Record<string, readonly Row[]>>;

type Schema = typeof schema;
type NameOf<T> = T extends {
  readonly _: { readonly name: infer N extends string };
  readonly patientId: SQLiteColumn;
}
  ? N
  : never;

/** Settings belong to a clinic; those that decisions of the person rest on go with them. */
const settingsTable = 'decision_settings';

/** The same with the columns of each table. */
export type RecordRows = {
  readonly [K in keyof Schema as NameOf<Schema[K]>]: Schema[K] extends SQLiteTable
    ? readonly Readonly<Omit<InferSelectModel<Schema[K]>, 'clinicId' | 'patientId'>>[]
    : never;
} & {
  readonly [settingsTable]: readonly Readonly<
    Omit<InferSelectModel<Schema['decisionSettings']>, 'clinicId'>
  >[];
};

export interface RecordColumn {
  readonly name: string;
  readonly kind: 'text' | 'number' | 'yes-no' | 'instant' | 'structure';
  readonly mayBeEmpty: boolean;
  /** Words it keeps to; empty = any. */
  readonly words: readonly string[];
  /** As the file names it, with its scale and unit. */
  readonly stored: string;
}

const kindOf = (name: string, { dataType, columnType }: SQLiteColumn): RecordColumn['kind'] => {
  if (dataType === 'boolean') return 'yes-no';
  // Instants are whole numbers of milliseconds, and are named so.
  if (dataType === 'number') return /At$|^until$|Since$/.test(name) ? 'instant' : 'number';
  return columnType === 'SQLiteCustomColumn' ? 'structure' : 'text';
};

const columnsOf = (table: SQLiteTable): readonly RecordColumn[] =>
  Object.entries(getTableColumns(table) as Record<string, SQLiteColumn>)
    .filter(([name]) => name !== 'clinicId' && name !== 'patientId')
    .map(([name, column]) => ({
      name,
      kind: kindOf(name, column),
      mayBeEmpty: !column.notNull,
      words: column.enumValues ?? [],
      stored: column.name,
    }));

/** The columns of each table, in the order of the schema. */
export const recordColumns: Readonly<Record<string, readonly RecordColumn[]>> = {
  ...Object.fromEntries(exportedTables.map(({ name, table }) => [name, columnsOf(table)])),
  [settingsTable]: columnsOf(schema.decisionSettings),
};

const rowsIn = async (access: Access, patientId: string, told: Told): Promise<readonly Row[]> => {
  const rows: Row[] = await access.store.read
    .select()
    .from(told.table)
    .where(and(eq(told.clinicId, access.clinicId), eq(told.patientId, patientId)));
  // Whose rows they are is said once for all of them.
  return rows.map(({ clinicId: _clinic, patientId: _patient, ...rest }) => rest);
};

const settingsIn = async (access: Access, patientId: string): Promise<readonly Row[]> => {
  const { decision, decisionSettings } = schema;
  const { id, settings } = decisionSettings;
  return access.store.read
    .selectDistinct({ id, settings })
    .from(decisionSettings)
    .innerJoin(decision, eq(decision.settingsId, id))
    .where(and(eq(decision.clinicId, access.clinicId), eq(decision.patientId, patientId)));
};

export const recordTablesOf = async (access: Access, patientId: string): Promise<RecordRows> => {
  const tables: Record<string, readonly Row[]> = {};
  for (const told of exportedTables) tables[told.name] = await rowsIn(access, patientId, told);
  tables[settingsTable] = await settingsIn(access, patientId);
  return tables as unknown as RecordRows;
};
