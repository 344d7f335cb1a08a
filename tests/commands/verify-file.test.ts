/** What the command that verifies finds in a file besides its chains, and that one finding hides no other. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { run as verifyAudit } from '#commands/verify-audit.ts';
import { storeHeads } from '#data/audit/audit-heads.ts';
import { findingsInFile } from '#data/database/file-check.mjs';
import type { Store } from '#data/database/store.ts';
import { auditKey, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let folder: string;
beforeEach(async () => {
  store = freshStore();
  const { clinician, patientId } = await twoClinics(store);
  await signedExercise(clinician, patientId);
  folder = mkdtempSync(path.join(tmpdir(), 'loadgate-verify-'));
  writeFileSync(path.join(folder, 'audit.key'), Buffer.from(auditKey).toString('hex'));
  await storeHeads(store, auditKey, ['a', 'b'], 1);
});
afterEach(() => {
  store.close();
  rmSync(folder, { recursive: true });
});

const run = () =>
  runHere(verifyAudit, [], { DATABASE_FILE: store.file, AUDIT_KEY_FILE: path.join(folder, 'audit.key') });

/** As somebody with the file in hand: no triggers, no references. */
const behind = (sql: string): void => {
  const { client } = store.writer;
  const triggers = client.prepare("SELECT name FROM sqlite_master WHERE type = 'trigger'").all();
  for (const { name } of triggers as { name: string }[]) client.exec(`DROP TRIGGER ${name}`);
  client.pragma('foreign_keys = OFF');
  client.exec(sql);
};

describe('npm run verify-audit', () => {
  it('finds a clinic that was taken away with its whole chain, by the heads kept of it', async () => {
    behind("DELETE FROM audit WHERE clinic_id = 'b'; DELETE FROM patient_identity WHERE clinic_id = 'b'");
    behind("DELETE FROM clinic WHERE id = 'b'");
    const { code, out } = await run();
    expect(code).toBe(1);
    expect(out).toContain('clinic b: row 1: The chain ends before it, but the head of row 1 was kept');
    expect(out).toContain('clinic b: the clinic’s own row is gone');
    expect(out).toMatch(/clinic a: \d+ rows hold/);
  });

  it('names a missing trigger, a changed row of the record and a row without its partner, each', async () => {
    store.writer.client.exec('DROP TRIGGER signature_no_update');
    store.writer.client.exec("UPDATE signature SET signed_by = 'somebody'");
    store.writer.client.pragma('foreign_keys = OFF');
    store.writer.client.exec("UPDATE patient_identity SET clinic_id = 'nowhere' WHERE clinic_id = 'b'");
    const { code, out } = await run();
    expect(code).toBe(1);
    expect(out).toContain('triggers: trigger signature_no_update is missing');
    expect(out).toMatch(/records: signature, row \S+: it is not as the product wrote it/);
    expect(out).toMatch(/file: patient_identity, row 3: names a row of clinic that is not there/);
    expect(out).toMatch(/clinic b: 1 rows hold/);
  });

  it('names a text whose bytes are none, and does not read on where that would end it', async () => {
    store.writer.client.exec("UPDATE clinic SET phone = CAST(x'41ff42' AS TEXT) WHERE id = 'a'");
    const { code, out } = await run();
    expect(code).toBe(1);
    expect(out).toMatch(/^file: clinic, row 1: the bytes in phone are no text$/m);
    expect(out).toContain('the history was not read');
  });
});

describe('whether a file is whole', () => {
  it('nothing is found in a file of the product, accents and emoji included', () => {
    store.writer.client.exec("UPDATE clinic SET name = 'Ächz é 膝 😀' WHERE id = 'a'");
    expect(findingsInFile(store.file)).toEqual({ damage: [], strays: [] });
  });

  it.each([
    ['x’c3’, a character cut off', "x'c3'"],
    ['x’ed a0 80’, half of a pair', "x'eda080'"],
    ['x’80’, a middle without a beginning', "x'80'"],
  ])('%s is found', (_, bytes) => {
    store.writer.client.exec(`UPDATE clinic SET name = CAST(${bytes} AS TEXT) WHERE id = 'b'`);
    expect(findingsInFile(store.file).damage).toEqual(['clinic, row 2: the bytes in name are no text']);
  });

  it('a page that was overwritten is found, and so is a file that is none', () => {
    store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
    const copy = path.join(folder, 'copy.sqlite');
    const bytes = readFileSync(store.file);
    const place = bytes.indexOf('Clinic a');
    const page = Math.floor(place / 4096) * 4096;
    writeFileSync(copy, Buffer.from(bytes).fill(0x5a, page, page + 4096));
    expect(findingsInFile(copy).damage.length).toBeGreaterThan(0);
    writeFileSync(copy, 'no database at all, only some words in a file');
    expect(findingsInFile(copy).damage).toEqual([expect.stringContaining('SQLITE_NOTADB')]);
  });
});
