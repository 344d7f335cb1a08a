/** Another encryption key: second factors, phones' unsent entries and records stay; cut short anywhere, the file opens. */
import fs from 'node:fs';
import path from 'node:path';
import { symmetricDecrypt } from 'better-auth/crypto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';
import { run as keys } from '#commands/keys.ts';
import { holdFile, lockFileOf } from '#commands/server/one-server.mjs';
import { codeSecrets } from '#data/accounts/code-secrets.ts';
import { decrypted, phoneEntriesKey } from '#server/phone-entries.ts';
import { openRuntime, type Runtime } from '#server/runtime.ts';
import { openAccount } from '#server/sign-in/auth.ts';
import { clinicNamed, sessionEntry } from '#tests/support/clinic.ts';
import { runHere } from '#tests/support/command-here.ts';
import { freshFile } from '#tests/support/store.ts';
import { encryptEntry } from '#ui/on-device/encrypt-entry.ts';

let file: string;
let at: Runtime;
const start = () => {
  at = openRuntime(readEnvironment({ DATABASE_FILE: file }));
};
const keyFile = (name = 'encryption') => path.join(`${file}.keys`, `${name}.key`);
const codeSecret = 'a secret of sixteen and more';
const change = () => runHere(keys, ['--change-encryption-key'], { DATABASE_FILE: file });

beforeEach(async () => {
  file = freshFile();
  start();
  await clinicNamed(at.store, 'a');
  await openAccount(at.auth, {
    ...{ email: 'c@clinic.example', name: 'C', clinicId: 'a', role: 'clinician', patientId: null },
    ...{ password: 'a long passphrase', codeSecret },
  });
  // A command makes what it makes for the owner alone; a thread of the tests cannot say so for itself.
  fs.writeFileSync(lockFileOf(file), '', { mode: 0o600 });
});
afterEach(() => at.store.close());

const secretHere = async (): Promise<string> => {
  const [row] = await codeSecrets(at.store);
  return symmetricDecrypt({ key: at.keys.signIn, data: row!.secret });
};

describe('the encryption key changed', () => {
  it('opens second factors and what a phone encrypted before and after, twice over, and ends sessions', async () => {
    const entry = sessionEntry({ entryId: 'e' });
    const waiting: unknown[] = [];
    for (let times = 0; times < 3; times += 1) {
      const encrypted = await encryptEntry(phoneEntriesKey(at.keys, 'a'), 'p', entry as never);
      waiting.push({ kind: 'session', entryId: 'e', sentAt: 1, encrypted });
      for (const body of waiting)
        expect(decrypted(at.keys, 'a', 'p', body as never)).toMatchObject({ kind: 'session' });
      expect(await secretHere()).toBe(codeSecret);
      const before = fs.readFileSync(keyFile(), 'utf8');
      at.store.close();
      expect(await change()).toMatchObject({ code: 0 });
      start();
      expect(fs.readFileSync(keyFile(), 'utf8')).not.toBe(before);
      expect(fs.readFileSync(keyFile(`encryption.earlier-${times + 1}`), 'utf8')).toBe(before);
    }
    const said = at.store.reader.client.prepare(
      "SELECT count(*) AS n FROM audit WHERE subject = 'encryption-key'",
    );
    expect(said.all()).toEqual([{ n: 3 }]);
  });

  it('cut short before the file was written goes on with the key before; after it, with the new one', async () => {
    at.store.close();
    const before = fs.readFileSync(keyFile(), 'utf8');
    fs.writeFileSync(`${keyFile()}.next`, 'ab'.repeat(32), { mode: 0o600 });
    start();
    expect(await secretHere()).toBe(codeSecret);
    at.store.close();
    await change();
    const after = fs.readFileSync(keyFile(), 'utf8');
    // As if it had ended between the write and the two renames, and between those.
    for (const undo of [() => fs.renameSync(keyFile('encryption.earlier-1'), keyFile()), () => undefined]) {
      fs.renameSync(keyFile(), `${keyFile()}.next`);
      undo();
      start();
      expect([fs.readFileSync(keyFile(), 'utf8'), await secretHere()]).toEqual([after, codeSecret]);
      expect(fs.readFileSync(keyFile('encryption.earlier-1'), 'utf8')).toBe(before);
      at.store.close();
    }
    start();
  });

  it('waits for no server', async () => {
    const lock = holdFile(file);
    expect(await change()).toMatchObject({ code: 1, problem: expect.stringContaining('Stop it first') });
    lock.release();
  });
});
