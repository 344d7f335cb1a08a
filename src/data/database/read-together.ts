/**
 * Prepared queries about one patient, answered by one statement. What a page or a decision looks at lies in some
 * thirty tables, and asking the file thirty times costs more than what is read. Each query's rows come as JSON
 * text in a cell of one row and are remembered as what that query found, so that whoever asks it is answered
 * without the file, and asks the file by itself once a table it reads has been written.
 */
import { is } from 'drizzle-orm';
import { SQLiteColumn } from 'drizzle-orm/sqlite-core';
import type { Access } from '../access.ts';
import type { Db } from './connection.ts';
import { isGathered } from './nested-rows.ts';
import type { Bound, Query } from './prepared.ts';
import type { Reading } from './remembered-reads.ts';
import { binderOf } from './row-reader.ts';
import { type Statements, statementsOf } from './statements.ts';

export type { Reading } from './remembered-reads.ts';

/** One of the queries; `values` where it is asked with more than the clinic and the patient. */
export interface Asked {
  readonly query: Query;
  readonly values?: (access: Access) => Bound;
}

interface Part {
  readonly sql: string;
  readonly bind: ReturnType<typeof binderOf>;
  /** All of its rows in one cell already. */
  readonly isOneCell: boolean;
  readonly columns: number;
  /** Places of columns that hold real numbers. */
  readonly reals: readonly number[];
}

const partOf = (db: Db, { query }: Asked): Part => {
  const { fields, getQuery } = query.on(db);
  const { sql, params } = getQuery();
  return {
    sql,
    bind: binderOf(params),
    isOneCell: fields.length === 1 && isGathered(fields[0]!.field),
    columns: fields.length,
    reals: fields.flatMap(({ field }, place) =>
      is(field, SQLiteColumn) && field.getSQLType() === 'real' ? [place] : [],
    ),
  };
};

/** JSON in SQLite keeps 15 digits of a real number; as text with 17 it comes back the same number. */
const cellOf = (place: number, { reals }: Part): string =>
  reals.includes(place)
    ? `CASE WHEN c${place} IS NULL THEN NULL ELSE printf('%!.17g', c${place}) END`
    : `c${place}`;

/** The order of the rows is that of the query: an aggregate reads its subquery in the order it gives. */
const cellFor = (part: Part): string => {
  if (part.isOneCell) return `(${part.sql})`;
  const places = Array.from({ length: part.columns }, (_, place) => place);
  const named = places.map((place) => `c${place}`).join(', ');
  const cells = places.map((place) => cellOf(place, part)).join(', ');
  return `(WITH q(${named}) AS (${part.sql}) SELECT json_group_array(json_array(${cells})) FROM q)`;
};

const rowsFrom = (cell: string, { isOneCell, reals }: Part): readonly unknown[] => {
  if (isOneCell) return [[cell]];
  const rows = JSON.parse(cell) as unknown[][];
  for (const row of rows) for (const place of reals) if (row[place] !== null) row[place] = Number(row[place]);
  return rows;
};

type Texts = Map<string, string>;

/** Each once, though two lists name it. */
const once = (all: readonly Asked[]): readonly Asked[] =>
  all.filter(
    (one, place) =>
      place === all.findIndex(({ query, values }) => query === one.query && values === one.values),
  );

/** Of a fixed list: its parts on each connection, and the text for whichever of them are asked. */
export const togetherOf = (all: readonly Asked[]) => {
  const asked = once(all);
  const known = new WeakMap<Db, { readonly parts: readonly Part[]; readonly texts: Texts }>();
  const on = (db: Db) => {
    const found = known.get(db) ?? { parts: asked.map((one) => partOf(db, one)), texts: new Map() };
    known.set(db, found);
    return found;
  };
  const missingOf = ({ remembered }: Statements, parts: readonly Part[], access: Access, bound: Bound) =>
    parts.flatMap((part, place) => {
      const more = asked[place]!.values;
      const values = part.bind(more ? { ...bound, ...more(access) } : bound);
      return remembered.rowsOf(part.sql, 'arrays', values) ? [] : [{ part, place, values }];
    });
  /** Reads what is not remembered yet; a single query is left to whoever asks it. */
  return (access: Access, patientId: string, more: Bound = {}): void => {
    const db = access.store.read;
    const statements = statementsOf(db);
    const { parts, texts } = on(db);
    const bound = { clinicId: access.clinicId, patientId, ...more };
    const missing = missingOf(statements, parts, access, bound);
    if (missing.length < 2) return;
    const key = missing.map(({ place }) => place).join();
    const text = texts.get(key) ?? `SELECT ${missing.map(({ part }) => cellFor(part)).join(', ')}`;
    texts.set(key, text);
    const [row] = statements
      .prepare(text)
      .raw()
      .all(...missing.flatMap(({ values }) => values)) as string[][];
    for (const [place, { part, values }] of missing.entries())
      statements.remembered.remember(part.sql, 'arrays', values, rowsFrom(row![place]!, part));
  };
};

export type Together = ReturnType<typeof togetherOf>;

/** What is read while the work goes on is read once, unless the work itself writes. */
const whileReading = <T>(db: Db, work: () => Promise<T>): Promise<T> =>
  statementsOf(db).remembered.during(work);

/** What is worked out from one record, until a row it was worked out from is written. */
export const workedOnce = <T>(
  // Whatever an access says of how a record is read, now or later, keeps its answers apart.
  { store, auditKey: _, ...by }: Access,
  name: string,
  about: unknown,
  make: () => Promise<T>,
): Promise<T> => {
  const key = JSON.stringify([name, by, about]);
  return statementsOf(store.read).remembered.worked(key, make);
};

/** The same for all that one page asks, question after question. */
export const readingOnce = (db: Db): Reading => statementsOf(db).remembered.over();

/** Reads all of it by one statement, where it is not known yet, and then does the work on what was read. */
export const readTogether = <T>(
  access: Access,
  patientId: string,
  together: Together,
  work: () => Promise<T>,
  more: Bound = {},
): Promise<T> =>
  whileReading(access.store.read, () => {
    together(access, patientId, more);
    return work();
  });
