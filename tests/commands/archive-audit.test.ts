/** The command that moves old audit rows out, and the one that checks afterwards, as an operator runs them. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { run as archiveAudit } from '#commands/archive-audit.ts';
import { run as verifyAudit } from '#commands/verify-audit.ts';
import type { Store } from '#data/database/store.ts';
import { auditKey, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { freshStore } from '#tests/support/store.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

describe('npm run archive-audit', () => {
  let store: Store;
  let folder: string;
  const own = (): Record<string, string> => ({
    DATABASE_FILE: store.file,
    AUDIT_KEY_FILE: path.join(folder, 'audit.key'),
    ENCRYPTION_KEY_FILE: path.join(folder, 'encryption.key'),
  });
  const archive = (env: Record<string, string>) => runHere(archiveAudit, [], { ...own(), ...env });
  const verify = () => runHere(verifyAudit, [], own());
  const archiveByItself = (env: Record<string, string>) => {
    const done = spawnSync(process.execPath, ['src/commands/run.mjs', 'archive-audit'], {
      cwd: root,
      env: { ...process.env, ...own(), ...env },
    });
    return { code: done.status, out: done.stdout.toString(), problem: done.stderr.toString() };
  };
  const files = () =>
    existsSync(`${store.file}.audit-archive`) ? readdirSync(`${store.file}.audit-archive`) : [];

  beforeEach(async () => {
    store = freshStore();
    const { clinician, patientId } = await twoClinics(store);
    await signedExercise(clinician, patientId);
    folder = mkdtempSync(path.join(tmpdir(), 'loadgate-archive-'));
    writeFileSync(path.join(folder, 'audit.key'), Buffer.from(auditKey).toString('hex'), { mode: 0o600 });
    writeFileSync(path.join(folder, 'encryption.key'), 'e'.repeat(64), { mode: 0o600 });
  });
  afterEach(() => {
    store.close();
    rmSync(folder, { recursive: true });
  });

  /** Demo, because only there may a clock be set. The rows are of 2 March 2026; eight years are kept. */
  const on = (day: string) => ({ DEMO: '1', CLINIC_NOW: `${day}T12:00:00Z` });

  it('moves nothing within the years; after them all but the newest row, and the chain holds', async () => {
    expect(await archive(on('2034-02-01'))).toMatchObject({
      code: 0,
      out: expect.stringContaining('clinic a: nothing is older than its years'),
    });
    expect(files()).toEqual([]);
    const moved = await archive(on('2034-04-01'));
    expect([moved.code, moved.problem]).toEqual([0, '']);
    expect(moved.out).toMatch(/^clinic a: rows up to 5 are in .*a-to-5\.jsonl$/m);
    expect(files()).toEqual(['a-to-5.jsonl']);
    const checked = await verify();
    expect(checked.code).toBe(0);
    expect(checked.out).toContain('clinic a: 2 rows hold and 5 archived rows; ');
    rmSync(`${store.file}.audit-archive`, { recursive: true });
    expect((await verify()).out).toContain('clinic a: 2 rows hold; 5 archived rows are not at hand; ');
  });

  it('moves nothing of a chain that was tampered with, and ends with 1', async () => {
    store.writer.client.exec('DROP TRIGGER audit_no_update');
    store.writer.client.exec("UPDATE audit SET actor_id = 'x' WHERE clinic_id = 'a' AND sequence = 2");
    const { code, out } = await archive(on('2034-04-01'));
    expect(code).toBe(1);
    expect(out).toContain('clinic a: not archived, ');
    expect(files()).toEqual([]);
  });

  it('ends with 2 for a file that does not exist, and makes none', () => {
    const { code, problem } = archiveByItself({ DATABASE_FILE: './no-such-file.sqlite' });
    expect([code, problem.includes('no-such-file.sqlite')]).toEqual([2, true]);
    expect(existsSync(path.join(root, 'no-such-file.sqlite'))).toBe(false);
  });
});
