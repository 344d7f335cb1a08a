/**
 * A finished entry, encrypted to the clinic: after that nobody opens it on this phone, the person who
 * wrote it included. A fresh key pair for each entry, P-256, HKDF and AES-GCM, all of the browser's own.
 * Who it belongs to is bound into the seal, so it cannot be sent as somebody else's.
 */
import { bytesOfText, textOfBytes } from './base64.ts';

export interface Encrypted {
  readonly version: 1;
  /** Public half of the key pair made for this entry. */
  readonly key: string;
  readonly iv: string;
  readonly data: string;
}

/** Bound into the seal; the server forms the same text. */
const encryptedFor = (patientId: string, entryId: string): string =>
  `loadgate entry 1 ${patientId} ${entryId}`;

const curve = { name: 'ECDH', namedCurve: 'P-256' } as const;
const letters = new TextEncoder();

const keyBetween = async (mine: CryptoKey, theirs: CryptoKey, info: string): Promise<CryptoKey> => {
  const shared = await crypto.subtle.deriveBits({ name: 'ECDH', public: theirs }, mine, 256);
  const base = await crypto.subtle.importKey('raw', shared, 'HKDF', false, ['deriveKey']);
  return crypto.subtle.deriveKey(
    { name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(32), info: letters.encode(info) },
    base,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt'],
  );
};

/** A browser without these functions (no secure connection) seals nothing. */
export const canEncrypt = (): boolean => globalThis.crypto?.subtle !== undefined;

export const encryptEntry = async (
  clinicKey: string,
  patientId: string,
  entry: { readonly entryId: string },
): Promise<Encrypted> => {
  const pair = await crypto.subtle.generateKey(curve, false, ['deriveBits']);
  const theirs = await crypto.subtle.importKey('raw', bytesOfText(clinicKey), curve, false, []);
  const bound = encryptedFor(patientId, entry.entryId);
  const key = await keyBetween(pair.privateKey, theirs, bound);
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const data = await crypto.subtle.encrypt(
    { name: 'AES-GCM', iv, additionalData: letters.encode(bound) },
    key,
    letters.encode(JSON.stringify(entry)),
  );
  const own = await crypto.subtle.exportKey('raw', pair.publicKey);
  return {
    version: 1,
    key: textOfBytes(new Uint8Array(own)),
    iv: textOfBytes(iv),
    data: textOfBytes(new Uint8Array(data)),
  };
};
