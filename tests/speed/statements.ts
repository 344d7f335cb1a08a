/** What the file is asked while something runs: each statement in order, on either connection. */
import type { Store } from '#data/database/store.ts';

export const statementsDuring = async (
  store: Store,
  work: () => Promise<unknown>,
): Promise<readonly string[]> => {
  const asked: string[] = [];
  const connections = [store.reader, store.writer];
  for (const { statements } of connections) statements.watch((sql) => asked.push(sql));
  try {
    await work();
  } finally {
    for (const { statements } of connections) statements.watch(null);
  }
  return asked;
};

const placeholders = (sql: string): number => (sql.match(/\?/g) ?? []).length;

/** How the file means to answer a statement, one line for each step. */
export const planOf = (store: Store, sql: string): readonly string[] => {
  if (!/^\s*(select|update|delete|with|insert)/i.test(sql)) return [];
  // On the reading connection: an explained write would keep the writer from its next commit.
  const rows = store.reader.client
    .prepare(`EXPLAIN QUERY PLAN ${sql}`)
    .all(...Array(placeholders(sql)).fill(1)) as { detail: string }[];
  return rows.map((row) => row.detail);
};
