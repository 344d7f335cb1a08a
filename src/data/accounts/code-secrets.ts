/** Secrets of one-time codes, encrypted by a key outside the file: what has to be written anew when that key changes. */
import { eq } from 'drizzle-orm';
import { auditWrite } from '../audit/audit.ts';
import { noteFingerprints } from '../database/key-fingerprints.ts';
import type { Store } from '../database/store.ts';
import { authSession, authTwoFactor } from '../schema/schema.ts';

export interface CodeSecrets {
  readonly id: string;
  readonly secret: string;
  readonly backupCodes: string;
}

export const codeSecrets = async (store: Store): Promise<readonly CodeSecrets[]> =>
  store.read
    .select({ id: authTwoFactor.id, secret: authTwoFactor.secret, backupCodes: authTwoFactor.backupCodes })
    .from(authTwoFactor);

interface Change {
  readonly store: Store;
  readonly auditKey: Uint8Array;
  readonly clinicIds: readonly string[];
  readonly now: number;
  readonly fingerprint: string;
  readonly rows: readonly CodeSecrets[];
}

/** All at once, with the new key's fingerprint. Sessions end: their cookies were signed by the key before. */
export const writeCodeSecrets = ({ store, clinicIds, rows, fingerprint, ...who }: Change): Promise<void> =>
  store.write(async (tx) => {
    for (const { id, secret, backupCodes } of rows)
      await tx.update(authTwoFactor).set({ secret, backupCodes }).where(eq(authTwoFactor.id, id));
    await tx.delete(authSession);
    noteFingerprints(store, new Map([['encryption', fingerprint]]));
    for (const clinicId of clinicIds)
      await auditWrite(tx, { store, clinicId, actorId: 'keys', ...who }, 'encryption-key', {
        subjectId: fingerprint,
      });
  });
