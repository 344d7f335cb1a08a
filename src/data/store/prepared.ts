/**
 * Queries built once for each connection. Putting a query together from its parts costs more than
 * running it where few rows come back, so hot ones are built on first use and only bound after that.
 */
import type { Db } from './connection.ts';

interface Built<T> {
  readonly execute: (values?: Record<string, unknown>) => T | Promise<T>;
}

/** `build` names what changes from call to call by `sql.placeholder`; the returned function binds it. */
export const prepared = <T>(
  build: (db: Db) => { readonly prepare: () => Built<T> },
): ((db: Db, values: Readonly<Record<string, unknown>>) => Promise<T>) => {
  const known = new WeakMap<Db, Built<T>>();
  return async (db, values) => {
    let query = known.get(db);
    if (!query) {
      query = build(db).prepare();
      known.set(db, query);
    }
    return query.execute(values);
  };
};
