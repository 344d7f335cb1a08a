/** The command that checks the audit chain of a file, as an auditor runs it. */
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { run as verifyAudit } from '#commands/verify-audit.ts';
import { headsFileOf, storeHeads } from '#data/audit/audit-heads.ts';
import type { Store } from '#data/database/store.ts';
import { auditKey, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { freshStore } from '#tests/support/store.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

describe('npm run verify-audit', () => {
  let store: Store;
  let folder: string;
  const places = () => ({ DATABASE_FILE: store.file, AUDIT_KEY_FILE: path.join(folder, 'audit.key') });
  const run = (env: Record<string, string> = {}, args: readonly string[] = []) =>
    runHere(verifyAudit, args, { ...places(), ...env });
  const runAsTyped = () => {
    const command = ['src/commands/run.mjs', 'verify-audit'];
    const done = spawnSync(process.execPath, command, { cwd: root, env: { ...process.env, ...places() } });
    return { code: done.status, out: done.stdout.toString(), problem: done.stderr.toString() };
  };

  beforeEach(async () => {
    store = freshStore();
    const { clinician, patientId } = await twoClinics(store);
    await signedExercise(clinician, patientId);
    folder = mkdtempSync(path.join(tmpdir(), 'loadgate-audit-'));
    writeFileSync(path.join(folder, 'audit.key'), Buffer.from(auditKey).toString('hex'));
  });
  afterEach(() => {
    store.close();
    rmSync(folder, { recursive: true });
  });

  it('says of each clinic how many rows hold, and ends with 0', () => {
    const { code, out, problem } = runAsTyped();
    expect([code, problem]).toEqual([0, '']);
    expect(out.split('\n')).toEqual([
      'clinic a: 6 rows hold; no head was kept, so a cut end would not show',
      'clinic b: 1 rows hold; no head was kept, so a cut end would not show',
      'records: 13 rows are as they were written',
      '',
    ]);
  });

  it('finds an end that was cut off after a head was kept, and names the first row that is gone', async () => {
    await storeHeads(store, auditKey, ['a', 'b'], 1);
    expect((await run()).out).toContain('clinic a: 6 rows hold; 1 kept heads agree');
    store.writer.client.exec('DROP TRIGGER audit_no_delete');
    store.writer.client.exec("DELETE FROM audit WHERE clinic_id = 'a' AND sequence >= 5");
    const { code, out } = await run();
    expect(code).toBe(1);
    expect(out).toContain('clinic a: row 5: ');
    expect(out).toContain('clinic b: 1 rows hold; 1 kept heads agree');
  });

  it('finds a head that was changed, and reads a copy of the heads kept elsewhere', async () => {
    await storeHeads(store, auditKey, ['a', 'b'], 1);
    const file = headsFileOf(store.file);
    const copy = path.join(folder, 'copy');
    copyFileSync(file, copy);
    writeFileSync(file, readFileSync(file, 'utf8').replace('"sequence":6', '"sequence":5'));
    expect(await run()).toMatchObject({ code: 1, out: expect.stringContaining('heads: line 1 of ') });
    expect((await run({}, ['--heads', copy])).code).toBe(0);
  });

  it('ends with 2 when it is asked for something it does not know', async () => {
    expect((await run({}, ['--mend'])).code).toBe(2);
    expect((await run({}, ['--heads', './no-such-heads'])).code).toBe(2);
  });

  const own = "clinic_id = 'a'";
  it.each([
    ['a row was changed', `UPDATE audit SET actor_id = 'x' WHERE ${own} AND sequence = 3`, 3],
    ['a row was removed', `DELETE FROM audit WHERE ${own} AND sequence = 2`, 2],
    ['the first row was removed', `DELETE FROM audit WHERE ${own} AND sequence = 1`, 1],
    [
      'a row was put in between and the rest moved down',
      `UPDATE audit SET sequence = sequence + 101 WHERE ${own} AND sequence >= 4;
       UPDATE audit SET sequence = sequence - 100 WHERE ${own} AND sequence > 100;
       INSERT INTO audit SELECT clinic_id, 4, at, actor_id, act, subject, subject_id, patient_id, detail, seal, seal FROM audit WHERE ${own} AND sequence = 3`,
      4,
    ],
    [
      'a row was put at the end',
      `INSERT INTO audit SELECT clinic_id, 7, at, actor_id, act, subject, subject_id, patient_id, detail, seal, seal FROM audit WHERE ${own} AND sequence = 6`,
      7,
    ],
    [
      'two rows changed places',
      `UPDATE audit SET sequence = 99 WHERE ${own} AND sequence = 3;
       UPDATE audit SET sequence = 3 WHERE ${own} AND sequence = 4;
       UPDATE audit SET sequence = 4 WHERE ${own} AND sequence = 99`,
      3,
    ],
  ])(
    '%s: names the clinic and the first row that does not hold, and ends with 1',
    async (_, statement, row) => {
      store.writer.client.exec('DROP TRIGGER audit_no_update; DROP TRIGGER audit_no_delete');
      store.writer.client.exec(statement);
      const { code, out } = await run();
      expect(code).toBe(1);
      expect(out).toContain(`clinic a: row ${row}: `);
      expect(out).toContain('clinic b: 1 rows hold; ');
    },
  );

  it('says that the key is another one, instead of calling every row changed', async () => {
    store.writer.client.exec("INSERT INTO key_fingerprint VALUES ('audit', 'of another key')");
    const { code, out, problem } = await run();
    expect([code, out]).toEqual([2, '']);
    expect(problem).toMatch(/audit\.key is not the one .* was made with/);
  });

  it('goes on past what does not hold, and says how many rows are wrong', async () => {
    store.writer.client.exec('DROP TRIGGER audit_no_update');
    store.writer.client.exec(`UPDATE audit SET actor_id = 'x' WHERE ${own} AND sequence IN (2, 5)`);
    const { code, out } = await run();
    expect(code).toBe(1);
    expect(out.split('\n')).toEqual([
      'triggers: trigger audit_no_update is missing',
      'clinic a: row 2: The row was changed after it was sealed.',
      'clinic a: row 5: The row was changed after it was sealed.',
      'clinic a: 2 rows do not hold or are missing',
      'clinic b: 1 rows hold; no head was kept, so a cut end would not show',
      'records: 13 rows are as they were written',
      '',
    ]);
  });

  it.each([
    [
      'a database file that does not exist',
      { DATABASE_FILE: './no-such-file.sqlite' },
      2,
      'no-such-file.sqlite',
    ],
    ['a key file that does not exist', { AUDIT_KEY_FILE: './no-such.key' }, 1, 'AUDIT_KEY_FILE'],
  ])('%s is named and nothing is made in its place', async (_, env, code, named) => {
    const done = await run(env);
    expect(done.code).toBe(code);
    expect(done.problem).toContain(named);
    expect(done.out).toBe('');
    expect(Object.values(env).filter((file) => existsSync(file))).toEqual([]);
    expect(existsSync(`${store.file}.keys`)).toBe(false);
  });
});
