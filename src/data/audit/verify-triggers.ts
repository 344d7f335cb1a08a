/** Whether the triggers that keep the append-only tables stand in the file as the schema has them. */
import Client from 'libsql';
import type { Store } from '../database/store.ts';
import { type Trigger, triggersOfSchema } from '../schema/triggers.ts';

const findingsBy = (client: Pick<Client.Database, 'prepare'>): readonly string[] => {
  const listed = "SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name";
  const here = new Map((client.prepare(listed).all() as Trigger[]).map(({ name, sql }) => [name, sql]));
  const wanted = new Map(triggersOfSchema().map(({ name, sql }) => [name, sql]));
  const missing = [...wanted].flatMap(([name, sql]) => {
    if (!here.has(name)) return [`trigger ${name} is missing`];
    return here.get(name) === sql ? [] : [`trigger ${name} is not as it was made`];
  });
  const added = [...here.keys()].filter((name) => !wanted.has(name));
  return [...missing, ...added.map((name) => `trigger ${name} is none of the product’s`)];
};

/** What differs, in words; empty when nothing does. */
export const triggerFindings = ({ reader }: Pick<Store, 'reader'>): readonly string[] =>
  findingsBy(reader.client);

/** The same of a file that nobody writes to, without opening it as a store, which would change it. */
export const triggerFindingsInFile = (file: string): readonly string[] => {
  const client = new Client(file);
  try {
    client.pragma('query_only = ON');
    return findingsBy(client);
  } finally {
    client.close();
  }
};
