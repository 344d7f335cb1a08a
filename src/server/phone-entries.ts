/**
 * Opens entries that phones encrypted to their clinic. Each clinic has a key pair of its own, made from
 * the server's key file: no second secret to lose, and one clinic's entries are closed to another.
 */
import { createDecipheriv, createECDH, createHmac, hkdfSync } from 'node:crypto';
import type { Keys } from './keys.ts';

const pairOf = (secret: Uint8Array, clinicId: string) => {
  const pair = createECDH('prime256v1');
  // Out of range happens once in 2^32 tries; the next number is then as good.
  for (let count = 0; ; count++) {
    try {
      pair.setPrivateKey(createHmac('sha256', secret).update(`clinic ${clinicId} ${count}`).digest());
      return pair;
    } catch (error) {
      if (count > 8) throw error;
    }
  }
};

/** What phones seal to; base64 of the uncompressed point. */
export const phoneEntriesKey = (keys: Keys, clinicId: string): string =>
  pairOf(keys.phoneEntries, clinicId).getPublicKey('base64');

export interface EncryptedBody {
  readonly kind: unknown;
  readonly entryId: string;
  readonly sentAt: unknown;
  readonly encrypted: {
    readonly version: 1;
    readonly key: string;
    readonly iv: string;
    readonly data: string;
  };
}

const isText = (value: unknown): value is string => typeof value === 'string' && value.length <= 90_000;

export const isEncrypted = (body: unknown): body is EncryptedBody => {
  if (typeof body !== 'object' || body === null || !('encrypted' in body) || !('entryId' in body))
    return false;
  const { encrypted, entryId } = body as { encrypted: unknown; entryId: unknown };
  if (typeof encrypted !== 'object' || encrypted === null || !isText(entryId)) return false;
  const { version, key, iv, data } = encrypted as Record<string, unknown>;
  return version === 1 && isText(key) && isText(iv) && isText(data);
};

const tagLength = 16;

const openedBy = (
  secret: Uint8Array,
  clinicId: string,
  patientId: string,
  { kind, entryId, sentAt, encrypted }: EncryptedBody,
): { readonly kind: unknown; readonly entry: unknown } | null => {
  try {
    const bound = `loadgate entry 1 ${patientId} ${entryId}`;
    const shared = pairOf(secret, clinicId).computeSecret(Buffer.from(encrypted.key, 'base64'));
    const key = Buffer.from(hkdfSync('sha256', shared, Buffer.alloc(32), bound, 32));
    const bytes = Buffer.from(encrypted.data, 'base64');
    const cipher = createDecipheriv('aes-256-gcm', key, Buffer.from(encrypted.iv, 'base64'), {
      authTagLength: tagLength,
    });
    cipher.setAAD(Buffer.from(bound));
    cipher.setAuthTag(bytes.subarray(bytes.length - tagLength));
    const plain = Buffer.concat([cipher.update(bytes.subarray(0, -tagLength)), cipher.final()]);
    const entry = JSON.parse(plain.toString('utf8')) as { entryId?: unknown };
    return entry.entryId === entryId ? { kind, entry: { ...entry, sentAt } } : null;
  } catch {
    return null;
  }
};

/**
 * The entry inside, with the time of sending from outside; null when it was not encrypted to this clinic for this
 * patient, by this key or one before it.
 */
export const decrypted = (keys: Keys, clinicId: string, patientId: string, body: EncryptedBody) => {
  for (const secret of [keys.phoneEntries, ...keys.earlierPhoneEntries]) {
    const opened = openedBy(secret, clinicId, patientId, body);
    if (opened) return opened;
  }
  return null;
};
