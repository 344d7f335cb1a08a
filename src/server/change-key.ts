/**
 * Another encryption or audit key, with the server stopped. Cut short anywhere, the file opens with the key it says is its
 * own: the next key waits beside the present one until the file has been written with it.
 */
import { randomBytes } from 'node:crypto';
import { rmSync } from 'node:fs';
import { symmetricDecrypt, symmetricEncrypt } from 'better-auth/crypto';
import { type CodeSecrets, codeSecrets, writeCodeSecrets } from '#data/accounts/code-secrets.ts';
import { auditWrite } from '#data/audit/audit.ts';
import { storeHeads } from '#data/audit/audit-heads.ts';
import { handOver } from '#data/audit/seal.ts';
import { fingerprintOf, noteFingerprints } from '#data/database/key-fingerprints.ts';
import { clinicIds } from '#data/patients/people.ts';
import { finishChange, keyFiles, nextKeyFile, signInKey, writeKey } from './keys.ts';
import type { Runtime } from './runtime.ts';

const under = async (row: CodeSecrets, before: string, after: string): Promise<CodeSecrets> => {
  const anew = async (data: string) =>
    symmetricEncrypt({ key: after, data: await symmetricDecrypt({ key: before, data }) });
  return { id: row.id, secret: await anew(row.secret), backupCodes: await anew(row.backupCodes) };
};

/** Answers the file of the new key. */
export const changeEncryptionKey = async ({ store, keys, settings, clock }: Runtime): Promise<string> => {
  const file = keyFiles(store.file, settings).find(({ name }) => name === 'encryption')!;
  const key = randomBytes(32);
  const rows: CodeSecrets[] = [];
  for (const row of await codeSecrets(store)) rows.push(await under(row, keys.signIn, signInKey(key)));
  // One left by a change that was cut short before the file was written is nobody's.
  rmSync(nextKeyFile(file.file), { force: true });
  writeKey(nextKeyFile(file.file), key);
  await writeCodeSecrets({
    ...{ store, auditKey: keys.audit, clinicIds: await clinicIds(store), now: clock.now(), rows },
    fingerprint: fingerprintOf('encryption', key),
  });
  finishChange(store, file);
  return file.file;
};

/**
 * The last row that the present key seals in each chain names the next by its fingerprint; what follows is sealed
 * with that one. The present key stays beside it, since the rows before are verified with it. Answers its file.
 */
export const changeAuditKey = async ({ store, keys, settings, clock }: Runtime): Promise<string> => {
  const file = keyFiles(store.file, settings).find(({ name }) => name === 'audit')!;
  const key = randomBytes(32);
  const fingerprint = fingerprintOf('audit', key);
  rmSync(nextKeyFile(file.file), { force: true });
  writeKey(nextKeyFile(file.file), key);
  const all = await clinicIds(store);
  await store.write(async (tx) => {
    noteFingerprints(store, new Map([['audit', fingerprint]]));
    for (const clinicId of all) {
      const who = { store, clinicId, actorId: 'keys', auditKey: keys.audit, now: clock.now() };
      await auditWrite(tx, who, handOver, {
        subjectId: fingerprint,
        detail: { from: fingerprintOf('audit', keys.audit) },
      });
    }
  });
  finishChange(store, file);
  await storeHeads(store, [...keys.auditKeys, key], all, Date.now());
  return file.file;
};
