/** A row of the record that was changed behind the audit is found, whatever became of the triggers. */
import { copyFileSync, readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { archiveBefore } from '#data/audit/audit-archive.ts';
import { knownChains } from '#data/audit/chains-known.ts';
import { digestOfRow } from '#data/audit/row-digests.ts';
import { verifyRows } from '#data/audit/verify-rows.ts';
import { triggerFindings } from '#data/audit/verify-triggers.ts';
import type { Store } from '#data/database/store.ts';
import { takeSession } from '#data/entries/take-entry.ts';
import { openStore } from '#data/open-store.ts';
import { audit, message } from '#data/schema/schema.ts';
import {
  accessOf,
  auditKey,
  sessionEntry,
  signedExercise,
  start,
  twoClinics,
} from '#tests/support/clinic.ts';
import { freshFile, freshStore } from '#tests/support/store.ts';

let store: Store;
let filled: string;
let patientId: string;
beforeAll(async () => {
  const first = freshStore();
  const { clinician, patientId: own } = await twoClinics(first);
  patientId = own;
  const { prescriptionId, itemId } = await signedExercise(clinician, patientId);
  const done = { set: 1, repetitions: 20, loadKg: 4, reserve: 2, stopReason: 'none' as const };
  const sets = [{ prescriptionId, itemId, ...done }];
  await takeSession(clinician, patientId, sessionEntry({ entryId: 'one', sets }));
  first.writer.client.pragma('wal_checkpoint(TRUNCATE)');
  first.close();
  filled = first.file;
});
beforeEach(() => {
  const file = freshFile();
  copyFileSync(filled, file);
  store = openStore(file);
});
afterEach(() => store.close());

const verify = () => verifyRows(store, auditKey, ['a', 'b']);

/** As somebody with the file in hand. */
const behind = (...statements: readonly string[]): void => {
  const { client } = store.writer;
  client.pragma('foreign_keys = OFF');
  for (const { name } of client.prepare("SELECT name FROM sqlite_master WHERE type = 'trigger'").all() as {
    name: string;
  }[])
    client.exec(`DROP TRIGGER ${name}`);
  for (const one of statements) client.exec(one);
};

describe('the rows of the record against the audit', () => {
  it('hold after ordinary work: every row of an append-only table is spoken of', async () => {
    const { rows, ...verdict } = await verify();
    expect(verdict).toEqual({ findings: [], wrong: 0, unknown: 0 });
    const spoken = store.reader.client
      .prepare(`SELECT count(*) AS n FROM training_session, set_log, signature`)
      .get() as { n: number };
    expect([spoken.n, rows > 12]).toEqual([1, true]);
  });

  it.each([
    ['a load was changed', 'UPDATE set_log SET load_kg = 40', 'set_log'],
    ['a repetition was taken off', 'UPDATE set_log SET repetitions = repetitions - 1', 'set_log'],
    [
      'a text was filled in where nothing stood',
      "UPDATE training_session SET amends = 'x'",
      'training_session',
    ],
    ['who signed was changed', "UPDATE signature SET signed_by = 'somebody'", 'signature'],
  ])('%s: the row is named, and the audit row that speaks of it', async (_, statement, table) => {
    behind(statement);
    const { findings, wrong } = await verify();
    expect(wrong).toBe(2);
    expect(findings).toEqual([
      expect.stringMatching(new RegExp(`^${table}, row \\S+: it is not as the product wrote it`)),
      expect.stringMatching(
        new RegExp(`^${table}: a row that row \\d+ of the audit of a speaks of is changed or gone$`),
      ),
    ]);
  });

  it('a session was replaced by another program, its trigger against that taken away: it is named', async () => {
    const { client } = store.writer;
    client.pragma('recursive_triggers = OFF');
    client.exec('DROP TRIGGER training_session_no_replace');
    const columns = client.pragma('table_info(training_session)') as { name: string }[];
    const values = columns.map(({ name }) => (name === 'ended_at' ? 'ended_at - 60000' : name)).join(', ');
    client.exec(`INSERT OR REPLACE INTO training_session SELECT ${values} FROM training_session`);
    const { wrong, findings } = await verify();
    expect([wrong, findings[0]]).toEqual([
      2,
      expect.stringMatching(/^training_session, row \S+: it is not as/),
    ]);
  });

  it('a row was taken away: the audit row that speaks of it is named', async () => {
    behind('DELETE FROM set_log');
    expect(await verify()).toMatchObject({
      wrong: 1,
      findings: [
        expect.stringMatching(/^set_log: a row that row \d+ of the audit of a speaks of is changed or gone$/),
      ],
    });
  });

  it('a row was put in, like another to the letter but for its id: it is named', async () => {
    const columns = store.writer.client.pragma('table_info(set_log)') as { name: string }[];
    const values = columns.map(({ name }) => (name === 'id' ? "'put-in'" : name)).join(', ');
    behind(`INSERT INTO set_log SELECT ${values} FROM set_log`);
    expect(await verify()).toMatchObject({
      wrong: 1,
      findings: [expect.stringMatching(/^set_log, row put-in: /)],
    });
  });

  it('several differences in several tables are all counted, and the rest still holds', async () => {
    const { rows } = await verify();
    behind('DELETE FROM set_log', "UPDATE signature SET signed_by = 'somebody'");
    expect(await verify()).toMatchObject({ rows: rows - 2, wrong: 3 });
  });

  it('a column that a later release adds, empty in old rows, changes nothing', async () => {
    store.writer.client.exec('ALTER TABLE set_log ADD COLUMN felt text');
    expect(await verify()).toMatchObject({ wrong: 0 });
  });

  it('with the archive at hand they hold as before; without it nothing is said of what it spoke of', async () => {
    const { rows } = await verify();
    const acting = accessOf(store, 'a', 'clinician-a', start + 1000);
    await archiveBefore(acting, start + 500);
    expect(await verify()).toMatchObject({ rows, wrong: 0, unknown: 0 });
    const archive = `${store.file}.audit-archive`;
    for (const name of readdirSync(archive)) rmSync(path.join(archive, name));
    const away = await verify();
    expect(away).toMatchObject({ wrong: 0 });
    expect(away.unknown).toBeGreaterThan(0);
    expect(away.rows + away.unknown).toBe(rows);
  });

  it('a digest tells nothing without the key, and hangs on the table and on every value', () => {
    const row = { id: 'x', pain: 3 };
    const of = (key: Uint8Array, table: string, values: object) =>
      digestOfRow(key, { table, row: { ...values } });
    const same = of(auditKey, 'morning', row);
    expect(of(auditKey, 'morning', { pain: 3, id: 'x' })).toBe(same);
    const others = [
      of(Buffer.alloc(32, 8), 'morning', row),
      of(auditKey, 'two_hours', row),
      of(auditKey, 'morning', { ...row, pain: 4 }),
      of(auditKey, 'morning', { ...row, pain: '3' }),
    ];
    expect([...new Set([same, ...others])]).toHaveLength(5);
  });

  it('a row cannot be put in past the audit by asking for it back', async () => {
    const values = {
      id: 'x',
      clinicId: 'a',
      patientId: patientId,
      at: 1,
      byId: 'c',
      byName: 'C',
      text: 't',
    };
    await expect(
      store.write((tx) =>
        tx
          .insert(message)
          .values(values as never)
          .returning(),
      ),
    ).rejects.toThrow(/answered to the audit/);
  });
});

describe('the triggers in a file', () => {
  it('are those of the schema; one missing, one altered and one added are each named', () => {
    expect(triggerFindings(store)).toEqual([]);
    store.writer.client.exec(`DROP TRIGGER set_log_no_replace; DROP TRIGGER audit_no_update;
      CREATE TRIGGER audit_no_update BEFORE UPDATE ON audit WHEN 0 BEGIN SELECT RAISE(ABORT, 'never'); END;
      CREATE TRIGGER quiet AFTER INSERT ON audit BEGIN DELETE FROM audit; END`);
    expect(triggerFindings(store)).toEqual([
      'trigger audit_no_update is not as it was made',
      'trigger set_log_no_replace is missing',
      'trigger quiet is none of the product’s',
    ]);
  });
});

describe('the clinics an audit is known of', () => {
  it('are those of the file, of its chains and of kept heads; one whose own row is gone is told apart', async () => {
    expect(await knownChains(store, [])).toEqual({ clinicIds: ['a', 'b'], withoutClinic: [] });
    behind("DELETE FROM clinic WHERE id = 'b'");
    const heads = [{ clinicId: 'c', sequence: 4, seal: 'x' }];
    expect(await knownChains(store, heads)).toEqual({
      clinicIds: ['a', 'b', 'c'],
      withoutClinic: ['b', 'c'],
    });
    expect((await store.read.select().from(audit)).some(({ clinicId }) => clinicId === 'b')).toBe(true);
  });
});
