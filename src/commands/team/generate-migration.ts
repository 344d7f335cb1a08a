/**
 * Writes what the schema has become as SQL: tables, indexes and checks by the migration tool, triggers
 * from the marks of the append-only tables. `--name=baseline` writes the baseline anew; any other name
 * adds a migration after it.
 */
import { spawnSync } from 'node:child_process';
import { appendFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { migrateStore } from '#data/database/migrate.ts';
import { openFile } from '#data/database/store.ts';
import { type Trigger, triggersOfSchema } from '#data/schema/triggers.ts';
import { inRoot, root } from '../paths.mjs';
import { CannotGoOn } from '../say.mjs';

const folder = inRoot('drizzle');
const sqlFiles = () => readdirSync(folder).filter((name) => name.endsWith('.sql'));
const metaFiles = () => readdirSync(path.join(folder, 'meta')).map((name) => path.join('meta', name));

const generate = (name: string, ...further: readonly string[]): void => {
  const tool = inRoot('node_modules', 'drizzle-kit', 'bin.cjs');
  const args = [tool, 'generate', '--config', 'drizzle/config.ts', `--name=${name}`, ...further];
  const { status, stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
  // The tool ends with 0 whatever happened.
  if (status !== 0 || stderr.trim() !== '') throw new CannotGoOn(`No migration was written. ${stderr}`);
};

/** Triggers of a file that all migrations written so far have made. */
const triggersNow = (): readonly Trigger[] => {
  const temporary = mkdtempSync(path.join(tmpdir(), 'loadgate-triggers-'));
  const store = openFile(path.join(temporary, 'file.sqlite'));
  try {
    if (sqlFiles().length > 0) migrateStore(store, folder);
    const listed = "SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name";
    return store.writer.client.prepare(listed).all() as Trigger[];
  } finally {
    store.close();
    rmSync(temporary, { recursive: true });
  }
};

/** Statements after which the triggers are those of the schema. */
const changesOfTriggers = (): readonly string[] => {
  const now = new Map(triggersNow().map(({ name, sql }) => [name, sql]));
  const wanted = new Map(triggersOfSchema().map(({ name, sql }) => [name, sql]));
  const other = (from: typeof now, to: typeof now) => [...from].filter(([name, sql]) => to.get(name) !== sql);
  return [
    ...other(now, wanted).map(([name]) => `DROP TRIGGER ${name};`),
    ...other(wanted, now).map(([, sql]) => `${sql};`),
  ];
};

const addMigration = (name: string): void => {
  const before = sqlFiles().length;
  generate(name);
  const changes = changesOfTriggers();
  if (changes.length === 0) return;
  if (sqlFiles().length === before) generate(name, '--custom');
  const newest = path.join(folder, sqlFiles().sort().at(-1)!);
  appendFileSync(newest, ['', ...changes].join('\n--> statement-breakpoint\n'));
  appendFileSync(newest, '\n');
};

/** One that comes out the same keeps its instant and ids, so that files made by it stay good. */
const writeBaseline = (): void => {
  const before = [...sqlFiles(), ...metaFiles()].map(
    (name) => [name, readFileSync(path.join(folder, name), 'utf8')] as const,
  );
  for (const name of [...sqlFiles(), 'meta']) rmSync(path.join(folder, name), { recursive: true });
  addMigration('baseline');
  const sql = before.filter(([name]) => name.endsWith('.sql'));
  const isSame = sql.length === 1 && readFileSync(path.join(folder, sqlFiles()[0]!), 'utf8') === sql[0]![1];
  if (isSame) for (const [name, text] of before) writeFileSync(path.join(folder, name), text);
};

export const run = (args: readonly string[]): number => {
  const [, name] = /^--name=([a-z][a-z0-9-]*)$/.exec(args.join(' ')) ?? [];
  if (!name) throw new CannotGoOn('Usage: npm run db:generate -- --name=what-changes', 2);
  if (name === 'baseline') writeBaseline();
  else addMigration(name);
  return 0;
};
