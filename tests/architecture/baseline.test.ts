/** The SQL that makes a file says what the schema says, to the letter. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { generateSQLiteDrizzleJson, generateSQLiteMigration } from 'drizzle-kit/api';
import { describe, expect, it } from 'vitest';
import * as schema from '#data/schema/schema.ts';
import { triggersOfSchema } from '#data/schema/triggers.ts';
import { freshStore, migrationsFolder } from '#tests/support/store.ts';

const readJson = (name: string) =>
  JSON.parse(readFileSync(path.join(migrationsFolder, 'meta', name), 'utf8'));

interface Journal {
  readonly entries: readonly { readonly tag: string }[];
}

const steps = (readJson('_journal.json') as Journal).entries.map(({ tag }) => tag);

const statementsOf = (tag: string): readonly string[] =>
  readFileSync(path.join(migrationsFolder, `${tag}.sql`), 'utf8')
    .split('--> statement-breakpoint')
    .map((statement) => statement.trim());

describe('the schema and the SQL that makes a file', () => {
  it('the migration tool finds nothing to add to the newest step', async () => {
    const last = String(steps.length - 1).padStart(4, '0');
    const now = await generateSQLiteDrizzleJson(schema);
    expect(await generateSQLiteMigration(readJson(`${last}_snapshot.json`), now)).toEqual([]);
  });

  it('the baseline is what the schema generates, tables and triggers, and nothing written by hand', async () => {
    expect(steps).toEqual(['0000_baseline']);
    const tables = await generateSQLiteMigration(
      await generateSQLiteDrizzleJson({}),
      await generateSQLiteDrizzleJson(schema),
    );
    const triggers = triggersOfSchema().map(({ sql }) => `${sql};`);
    const wanted = [...tables, ...triggers].map((statement) => statement.trim());
    expect([...statementsOf('0000_baseline')].sort()).toEqual(wanted.sort());
  });

  it('a file holds the triggers of the append-only tables, and no others', () => {
    const store = freshStore();
    const listed = "SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name";
    const found = store.reader.client.prepare(listed).all();
    store.close();
    expect(found).toEqual(triggersOfSchema());
  });
});
