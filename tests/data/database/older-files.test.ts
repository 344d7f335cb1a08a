/** Files of an earlier step of the schema, brought to a later one; the later step is made up. */
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';
import { appendAudit } from '#data/audit/audit.ts';
import { headsFileOf, readHeads, storeHeads } from '#data/audit/audit-heads.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { migrateStore, pendingMigrations } from '#data/database/migrate.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import { demoClinic } from '#demo/clinic.ts';
import { openRuntime } from '#server/runtime.ts';
import { accessOf, auditKey, clinicNamed } from '#tests/support/clinic.ts';
import { freshFile, migrationsFolder } from '#tests/support/store.ts';

interface Journal {
  readonly entries: readonly { readonly tag: string; readonly when: number }[];
}

const journalOf = (folder: string) => path.join(folder, 'meta', '_journal.json');
const journal = JSON.parse(readFileSync(journalOf(migrationsFolder), 'utf8')) as Journal;
const [baseline] = journal.entries;

const temporary = mkdtempSync(path.join(tmpdir(), 'loadgate-older-'));
afterAll(() => rmSync(temporary, { recursive: true }));

/** A step as a later release may add one: a column, and a table with rows of its own. */
const laterStep = [
  'ALTER TABLE site ADD COLUMN parking text;',
  'CREATE TABLE room (id text PRIMARY KEY NOT NULL, site_id text NOT NULL REFERENCES site(id));',
  "CREATE TRIGGER room_no_delete BEFORE DELETE ON room BEGIN SELECT RAISE(ABORT, 'room is append-only'); END;",
].join('\n--> statement-breakpoint\n');

const laterRelease = (name: string, sql: string): string => {
  const folder = path.join(temporary, name);
  cpSync(migrationsFolder, folder, { recursive: true });
  const step = { ...baseline!, idx: 1, when: baseline!.when + 1000, tag: '0001_rooms' };
  writeFileSync(journalOf(folder), JSON.stringify({ ...journal, entries: [baseline, step] }));
  writeFileSync(path.join(folder, '0001_rooms.sql'), sql);
  return folder;
};

const opened: Store[] = [];
const open = (file: string): Store => {
  const store = openStore(file);
  opened.push(store);
  return store;
};
afterEach(() => {
  for (const store of opened.splice(0)) store.close();
});

const withAudit = async (): Promise<Store> => {
  const store = open(freshFile());
  migrateStore(store, migrationsFolder, auditKey);
  await clinicNamed(store, 'a');
  const access = accessOf(store, 'a', 'clinician-a');
  for (const subject of ['one', 'two']) {
    await store.write((tx) => appendAudit(tx, access, { act: 'write', subject }));
  }
  await storeHeads(store, auditKey, ['a'], 1);
  return store;
};

const columnsOf = (store: Store, table: string): readonly string[] =>
  (store.writer.client.pragma(`table_info(${table})`) as { name: string }[]).map(({ name }) => name);

/** Makes a file look as one whose first step was another, an hour earlier. */
const fromEarlierBaseline = (store: Store): void => {
  store.writer.client.exec(`UPDATE __drizzle_migrations SET created_at = ${baseline!.when - 3_600_000}`);
};

describe('a file of an earlier step of the schema', () => {
  it('is copied first, then brought up to date, its audit chain whole', async () => {
    const store = await withAudit();
    const later = laterRelease('later', laterStep);
    expect(pendingMigrations(store, later)).toBe(1);
    const migrated = migrateStore(store, later, auditKey);
    expect(migrated).toMatchObject({ ok: true, applied: 1 });
    expect([pendingMigrations(store, later), migrateStore(store, later, auditKey)]).toMatchObject([
      0,
      { applied: 0 },
    ]);
    expect(columnsOf(store, 'site')).toContain('parking');
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({ ok: true, rows: 2 });
    const check = store.reader.client.pragma('integrity_check') as { integrity_check: string }[];
    expect(check[0]?.integrity_check).toBe('ok');
    expect(store.reader.client.pragma('foreign_key_check')).toEqual([]);
    const backup = migrated.ok ? migrated.backup! : '';
    expect(existsSync(backup)).toBe(true);
    const copy = open(backup);
    expect(columnsOf(copy, 'site')).not.toContain('parking');
    const heads = readHeads(headsFileOf(backup), auditKey);
    expect(heads).toMatchObject({ ok: true, heads: [{ clinicId: 'a', sequence: 2 }] });
    expect(await verifyChain(copy, auditKey, 'a', heads.ok ? heads.heads : [])).toMatchObject({ ok: true });
  });

  it('stays as it was when a step fails half-way', async () => {
    const store = await withAudit();
    const broken = laterRelease(
      'broken',
      `${laterStep}\n--> statement-breakpoint\nCREATE TABLE site (id text);`,
    );
    expect(() => migrateStore(store, broken, auditKey)).toThrow(/site/);
    expect(columnsOf(store, 'site')).not.toContain('parking');
    expect(pendingMigrations(store, broken)).toBe(1);
    expect(migrateStore(store, migrationsFolder, auditKey)).toMatchObject({ ok: true, applied: 0 });
  });

  it('is refused by a release that lacks its newest step, with the way out', async () => {
    const store = await withAudit();
    migrateStore(store, laterRelease('newest', laterStep), auditKey);
    const refused = migrateStore(store, migrationsFolder, auditKey);
    expect(refused).toMatchObject({ ok: false, found: 'newer' });
    expect(refused.ok ? '' : refused.reason).toMatch(/newer release.*restore a backup/s);
  });
});

describe('the copy made before a file is brought up to date', () => {
  const backupsOf = (store: Store) =>
    readdirSync(`${store.file}.backups`).filter((name) => name.endsWith('.sqlite'));
  const check = (store: Store) =>
    Object.values((store.reader.client.pragma('integrity_check') as object[])[0]!)[0];
  /** The file as it was before a step, put back in place with its old name. */
  const goBack = (store: Store, backup: string): Store => {
    store.close();
    opened.splice(opened.indexOf(store), 1);
    for (const end of ['', '-wal', '-shm']) rmSync(`${store.file}${end}`, { force: true });
    cpSync(backup, store.file);
    return open(store.file);
  };
  const backupOf = (store: Store, folder: string): string => {
    const migrated = migrateStore(store, folder, auditKey);
    if (!migrated.ok || !migrated.backup) throw new Error('No copy was made.');
    return migrated.backup;
  };

  it('is made anew when an earlier start was killed half-way: what that left, of this step or another, is no copy and goes', async () => {
    const store = await withAudit();
    const folder = `${store.file}.backups`;
    mkdirSync(folder);
    const half = readFileSync(store.file).subarray(0, 5000);
    const step = baseline!.when + 1000;
    const begun = 'at-2026-03-02T09-00-00-000Z.sqlite';
    const left = [
      `before-${step}.sqlite`,
      ...[`before-${step}-${begun}.unfinished`, `before-${step - 1000}-${begun}.manifest.json.unfinished`],
    ];
    for (const name of left) writeFileSync(path.join(folder, name), half);
    const backup = backupOf(store, laterRelease('after-a-kill', laterStep));
    expect(left).not.toContain(path.basename(backup));
    expect(readdirSync(folder).filter((name) => name.includes('unfinished'))).toEqual([]);
    const copy = open(backup);
    expect(check(copy)).toBe('ok');
    expect(await verifyChain(copy, auditKey, 'a')).toMatchObject({ ok: true, rows: 2 });
  });

  it('carries the time in its name and is made at every upgrade: one made a week ago is not taken for today’s', async () => {
    const store = await withAudit();
    const folder = laterRelease('again', laterStep);
    const first = backupOf(store, folder);
    expect(path.basename(first)).toMatch(/^before-\d+-at-\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d-\d{3}Z\.sqlite$/);
    const back = goBack(store, first);
    const access = accessOf(back, 'a', 'clinician-a');
    await back.write((tx) => appendAudit(tx, access, { act: 'write', subject: 'a week of work' }));
    const second = backupOf(back, folder);
    expect(backupsOf(back).sort()).toEqual([path.basename(first), path.basename(second)].sort());
    expect(await verifyChain(open(first), auditKey, 'a')).toMatchObject({ rows: 2 });
    expect(await verifyChain(open(second), auditKey, 'a')).toMatchObject({ rows: 3 });
  });

  it('is checked before it counts: when it does not hold the file stays at its step', async () => {
    const store = await withAudit();
    const { client } = store.writer;
    client.exec('CREATE TABLE odd (n integer CHECK (n > 0)); PRAGMA ignore_check_constraints = ON');
    client.exec('INSERT INTO odd VALUES (-1)');
    const folder = laterRelease('not-whole', laterStep);
    expect(() => migrateStore(store, folder, auditKey)).toThrow(/not whole/);
    expect(pendingMigrations(store, folder)).toBe(1);
    expect(backupsOf(store)).toEqual([]);
  });
});

describe('a file of an earlier baseline', () => {
  it('is refused unchanged, with the way out', async () => {
    const store = await withAudit();
    fromEarlierBaseline(store);
    const refused = migrateStore(store, migrationsFolder, auditKey);
    expect(refused).toMatchObject({ ok: false, found: 'earlier-baseline' });
    expect(refused.ok ? '' : refused.reason).toMatch(/Start the release that made it, or name another file/);
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({ ok: true, rows: 2 });
  });

  /** A file of one clinic, its heads kept, as an earlier baseline left it. */
  const fileOf = async (clinicId: string): Promise<string> => {
    const store = openStore(freshFile());
    migrateStore(store, migrationsFolder, auditKey);
    await clinicNamed(store, clinicId);
    const access = accessOf(store, clinicId, 'somebody');
    await store.write((tx) => appendAudit(tx, access, { act: 'write', subject: 'one' }));
    await storeHeads(store, auditKey, [clinicId], 1);
    fromEarlierBaseline(store);
    store.close();
    return store.file;
  };

  const clinicsIn = (store: Store) => store.reader.client.prepare('SELECT id FROM clinic').all();

  it('is replaced by an empty one when it holds the demo clinic alone and the demo is started', async () => {
    const file = await fileOf(demoClinic.id);
    const { store } = openRuntime(readEnvironment({ DATABASE_FILE: file, DEMO: '1' }));
    opened.push(store);
    expect(clinicsIn(store)).toEqual([]);
    expect(existsSync(headsFileOf(file))).toBe(false);
  });

  it.each([
    ['the demo clinic, outside the demo', demoClinic.id, {}],
    ['any other clinic, even in a demo', 'a', { DEMO: '1' }],
  ])('is never replaced: %s', async (_, clinicId, settings) => {
    const file = await fileOf(clinicId);
    expect(() => openRuntime(readEnvironment({ DATABASE_FILE: file, ...settings }))).toThrow(
      /cannot be brought forward/,
    );
    expect(clinicsIn(open(file))).toEqual([{ id: clinicId }]);
  });
});
