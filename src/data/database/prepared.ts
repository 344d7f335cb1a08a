/**
 * Queries built once for each connection. Putting a query together from its parts costs more than
 * running it where few rows come back, so hot ones are built on first use and only bound after that.
 */
import { and, eq, type SQL, sql } from 'drizzle-orm';
import type { SQLiteColumn } from 'drizzle-orm/sqlite-core';
import type { Access } from '../access.ts';
import type { Db } from './connection.ts';
import type { Rows } from './remembered-reads.ts';
import { binderOf, type PreparedQuery, rowReaderOf } from './row-reader.ts';
import { statementsOf } from './statements.ts';

interface Built<T> {
  readonly execute: (values?: Record<string, unknown>) => T | Promise<T>;
}

/** A query as it stands on one connection. */
interface Standing<T = unknown> extends PreparedQuery {
  readonly ask: (values: Bound) => T | Promise<T>;
}

/** A query by which others can be answered together (`read-together.ts`). */
export interface Query {
  /** As it is prepared on a connection. */
  readonly on: (db: Db) => Standing;
}

type Build<T> = (db: Db) => { readonly prepare: () => Built<T> };

export type Bound = Readonly<Record<string, string | number | null>>;

/** What the builder made of rows that are remembered; shared by all who ask, so nobody may change it. */
const made = new WeakMap<Rows, unknown>();

/** A query that is asked again while its rows are remembered is not put together from its cells again. */
const standingOn = <T>(db: Db, built: Built<T>): Standing<T> => {
  const query = built as Built<T> & PreparedQuery;
  const { sql: text, params } = query.getQuery();
  const bind = binderOf(params);
  const readRow = rowReaderOf(query.fields);
  const statements = statementsOf(db);
  const { remembered } = statements;
  const ask = (values: Bound): T | Promise<T> => {
    if (!readRow && !remembered.isRemembering()) return built.execute(values);
    const rows = statements
      .prepare(text)
      .raw()
      .all(...bind(values)) as readonly (readonly unknown[])[];
    if (made.has(rows)) return made.get(rows) as T;
    const answer = readRow ? (rows.map(readRow) as T) : built.execute(values);
    if (remembered.isRemembering() && !(answer instanceof Promise)) made.set(rows, Object.freeze(answer));
    return answer;
  };
  return { getQuery: () => query.getQuery(), fields: query.fields, ask };
};

/** `build` names what changes from call to call by `sql.placeholder`; the returned function binds it. */
export const prepared = <T>(build: Build<T>): ((db: Db, values: Bound) => Promise<T>) & Query => {
  const known = new WeakMap<Db, Standing<T>>();
  const on = (db: Db): Standing<T> => {
    const query = known.get(db) ?? standingOn(db, build(db).prepare());
    known.set(db, query);
    return query;
  };
  return Object.assign(async (db: Db, values: Bound) => on(db).ask(values), { on });
};

/** Rows of the caller's clinic. */
export const ofClinic = (table: { readonly clinicId: SQLiteColumn }): SQL =>
  eq(table.clinicId, sql.placeholder('clinicId'));

/** Rows of one patient of the caller's clinic. */
export const ofPatient = (table: {
  readonly clinicId: SQLiteColumn;
  readonly patientId: SQLiteColumn;
}): SQL => and(ofClinic(table), eq(table.patientId, sql.placeholder('patientId')))!;

/** A prepared query about one patient; its conditions begin with `ofPatient`. */
export const patientQuery = <T>(build: Build<T>) => {
  const run = prepared(build);
  const ask = (access: Access, patientId: string, more: Bound = {}): Promise<T> =>
    run(access.store.read, { clinicId: access.clinicId, patientId, ...more });
  return Object.assign(ask, { on: run.on });
};
