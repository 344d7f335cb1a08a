/** Another audit key: the history verifies across it, nobody with the earlier key adds to it, cut short it opens. */
import fs from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { run as archive } from '#commands/archive-audit.ts';
import { run as backup } from '#commands/backup.ts';
import { readEnvironment } from '#commands/environment.mjs';
import { run as keys } from '#commands/keys.ts';
import { run as restore } from '#commands/restore.ts';
import { CannotGoOn } from '#commands/say.mjs';
import { lockFileOf } from '#commands/server/one-server.mjs';
import { run as verifyAudit } from '#commands/verify-audit.ts';
import { flushReads, noteRead } from '#data/audit/audit.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { takeSession } from '#data/entries/take-entry.ts';
import { erasePerson } from '#data/erasure/erase-person.ts';
import { addPatient } from '#data/patients/people.ts';
import { storeHeadsNow } from '#server/jobs/audit-anchoring.ts';
import { openRuntime, type Runtime } from '#server/runtime.ts';
import { accessOf, clinicNamed, sessionEntry, signedExercise } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { freshFile } from '#tests/support/store.ts';

let file: string;
let at: Runtime;
let patientId: string;
const env = () => ({ DATABASE_FILE: file });
const start = () => {
  at = openRuntime(readEnvironment(env()));
};
const access = (clinicId = 'a') => ({
  ...accessOf(at.store, clinicId, 'clinician-a'),
  auditKey: at.keys.audit,
});
const keyFile = (name = 'audit') => path.join(`${file}.keys`, `${name}.key`);
const save = (entryId: string) => takeSession(access(), patientId, sessionEntry({ entryId }));
const change = async () => {
  at.store.close();
  expect(await runHere(keys, ['--change-audit-key'], env())).toMatchObject({ code: 0 });
  start();
};
const verified = () => runHere(verifyAudit, [], env());

beforeEach(async () => {
  file = freshFile();
  start();
  await clinicNamed(at.store, 'a');
  const person = { givenName: 'Test', familyName: 'Person', birthDay: '1958-06-01', phone: null };
  patientId = await addPatient(access(), person);
  await signedExercise(access(), patientId);
  await save('before');
  await storeHeadsNow(at);
  fs.writeFileSync(lockFileOf(file), '', { mode: 0o600 });
});
afterEach(() => at.store.close());

describe('the audit key changed', () => {
  it('twice over: chain, heads and every row of the record hold across, of old clinics and of one begun since', async () => {
    for (const entryId of ['after-one', 'after-two']) {
      const before = fs.readFileSync(keyFile(), 'utf8');
      await change();
      expect(fs.readFileSync(keyFile(), 'utf8')).not.toBe(before);
      await save(entryId);
    }
    await clinicNamed(at.store, 'b');
    await addPatient(access('b'), {
      ...{ givenName: 'New', familyName: 'Person', birthDay: '1958-06-01', phone: null },
    });
    await storeHeadsNow(at);
    const { code, out } = await verified();
    expect([code, out]).toEqual([0, expect.stringMatching(/clinic a: \d+ rows hold; 4 kept heads agree/)]);
    expect(out).toMatch(/clinic b: \d+ rows hold/);
    expect(out).toMatch(/records: \d+ rows are as they were written$/m);
  });

  it('the drill: backed up, restored with both keys, archived, a person erased: everything verifies', async () => {
    await change();
    await save('after');
    const folder = `${file}.copies`;
    const { out } = await runHere(backup, ['--to', folder], env());
    const to = path.join(folder, 'elsewhere', 'clinic.sqlite');
    fs.cpSync(`${file}.keys`, `${to}.keys`, { recursive: true });
    const from = /^backup (.*)$/m.exec(out)![1]!;
    expect(await runHere(restore, ['--from', from, '--to', to], {})).toMatchObject({ code: 0 });
    expect(await runHere(archive, [], env())).toMatchObject({ code: 0 });
    await erasePerson(access(), [patientId], 'asked', at.keys.auditKeys);
    expect(await verified()).toMatchObject({ code: 0 });
  });

  it('rows that somebody with the earlier key adds are named', async () => {
    const earlier = at.keys.audit;
    await change();
    const forged = { ...access(), auditKey: earlier };
    await takeSession(forged, patientId, sessionEntry({ entryId: 'forged' }));
    expect(await verifyChain(at.store, at.keys.auditKeys, 'a')).toMatchObject({
      ok: false,
      finding: 'The row was changed after it was sealed.',
    });
  });

  it('beside a command that runs: what it would note is refused with what to do, and the chain holds', async () => {
    noteRead(access(), { subject: 'export.csv', patientId });
    expect(await flushReads(at.store)).toBe(1);
    const rows = () => at.store.reader.client.prepare('SELECT sequence FROM audit').all().length;
    expect(await runHere(keys, ['--change-audit-key'], env())).toMatchObject({ code: 0 });
    const before = rows();
    noteRead(access(), { subject: 'export.csv', patientId });
    const flushed = flushReads(at.store);
    await expect(flushed).rejects.toBeInstanceOf(CannotGoOn);
    await expect(flushed).rejects.toThrow(/was changed while this ran\. Run it again\.$/);
    expect(rows()).toEqual(before);
    expect(await verified()).toMatchObject({ code: 0 });
    at.store.close();
    start();
    noteRead(access(), { subject: 'export.csv', patientId });
    expect(await flushReads(at.store)).toBe(1);
    expect(await verified()).toMatchObject({ code: 0 });
  });

  it('an end cut off with the row that hands over is named, though no head was kept of it', async () => {
    await change();
    const { client } = at.store.writer;
    client.exec('DROP TRIGGER audit_no_delete');
    client.exec("DELETE FROM audit WHERE subject = 'audit-key'");
    expect(await verifyChain(at.store, at.keys.auditKeys, 'a')).toMatchObject({
      ok: false,
      finding: expect.stringContaining('hands over to the next is gone'),
    });
  });

  it('without the earlier key what was written before does not pass for verified', async () => {
    await change();
    fs.rmSync(keyFile('audit.earlier-1'));
    expect(await verified()).toMatchObject({
      code: 1,
      out: expect.stringMatching(/^keys: the audit key used before \([0-9a-f]{32}\) is not at hand/m),
    });
  });

  it('cut short before the file was written goes on with the key before; after it, with the new one', async () => {
    at.store.close();
    const before = fs.readFileSync(keyFile(), 'utf8');
    fs.writeFileSync(`${keyFile()}.next`, 'ab'.repeat(32), { mode: 0o600 });
    start();
    await save('meanwhile');
    expect((await verified()).code).toBe(0);
    await change();
    const after = fs.readFileSync(keyFile(), 'utf8');
    at.store.close();
    // As if it had ended between the write and the two renames, and between those.
    for (const undo of [() => fs.renameSync(keyFile('audit.earlier-1'), keyFile()), () => undefined]) {
      fs.renameSync(keyFile(), `${keyFile()}.next`);
      undo();
      start();
      expect([fs.readFileSync(keyFile(), 'utf8'), (await verified()).code]).toEqual([after, 0]);
      expect(fs.readFileSync(keyFile('audit.earlier-1'), 'utf8')).toBe(before);
      at.store.close();
    }
    start();
  });
});
