/**
 * What a device signs when a passkey is made or used, read and checked (W3C Web Authentication,
 * level 2: the layout of section 6.1, the steps of sections 7.1 and 7.2). No statement about the
 * maker of the device is asked for, so none is read.
 */
import { createHash, createPublicKey, type KeyObject, verify } from 'node:crypto';

/** Where this product is: a passkey answers only there. */
export interface PasskeyPlace {
  readonly origin: string;
  readonly host: string;
}

/** Null where the address is a number: browsers bind passkeys to names only. */
export const passkeyPlace = (origin: string): PasskeyPlace | null => {
  const { hostname } = new URL(origin);
  return /^[\d.]+$|^\[/.test(hostname) ? null : { origin, host: hostname };
};

const sha256 = (data: Uint8Array | string): Buffer => createHash('sha256').update(data).digest();

const jsonOf = (bytes: Buffer): Readonly<Record<string, unknown>> => {
  try {
    const value: unknown = JSON.parse(bytes.toString('utf8'));
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
};

/** The challenge that was answered, when the browser says it was for us and for this. */
export const answeredChallenge = (
  clientData: Buffer,
  type: 'webauthn.create' | 'webauthn.get',
  { origin }: PasskeyPlace,
): string | null => {
  const said = jsonOf(clientData);
  const isOurs = said.type === type && said.origin === origin && said.crossOrigin !== true;
  if (!isOurs || typeof said.challenge !== 'string') return null;
  return Buffer.from(said.challenge, 'base64url').toString('utf8');
};

const flag = { present: 0x01, verified: 0x04, holdsKey: 0x40 } as const;
const fixedLength = 37;
const makerLength = 16;

export interface AuthenticatorData {
  readonly counter: number;
  /** Only when a passkey was just made. */
  readonly passkeyId: string | null;
}

const passkeyIdIn = (bytes: Buffer): string | null => {
  const from = fixedLength + makerLength + 2;
  if (bytes.length < from) return null;
  const length = bytes.readUInt16BE(from - 2);
  if (length < 1 || length > 1023 || bytes.length < from + length) return null;
  return bytes.subarray(from, from + length).toString('base64url');
};

/** Null unless it is for this host and the person was there and proved it to the device by PIN, finger or face. */
export const authenticatorData = (bytes: Buffer, { host }: PasskeyPlace): AuthenticatorData | null => {
  if (bytes.length < fixedLength || !bytes.subarray(0, 32).equals(sha256(host))) return null;
  const flags = bytes[32]!;
  if (!(flags & flag.present) || !(flags & flag.verified)) return null;
  const passkeyId = flags & flag.holdsKey ? passkeyIdIn(bytes) : null;
  return { counter: bytes.readUInt32BE(33), passkeyId };
};

/** A key of a kind we ask for: ECDSA on P-256, Ed25519, RSA of 2048 bits or more. Null for any other. */
export const publicKeyFrom = (text: string): KeyObject | null => {
  try {
    const key = createPublicKey({ key: Buffer.from(text, 'base64url'), format: 'der', type: 'spki' });
    const { namedCurve, modulusLength = 0 } = key.asymmetricKeyDetails ?? {};
    const isKnown =
      (key.asymmetricKeyType === 'ec' && namedCurve === 'prime256v1') ||
      key.asymmetricKeyType === 'ed25519' ||
      (key.asymmetricKeyType === 'rsa' && modulusLength >= 2048);
    return isKnown ? key : null;
  } catch {
    return null;
  }
};

/** The same as numbers that a browser is asked with (COSE: ES256, EdDSA, RS256). */
export const algorithms: readonly number[] = [-7, -8, -257];

export const isSigned = (
  publicKey: string,
  device: Buffer,
  clientData: Buffer,
  signature: Buffer,
): boolean => {
  const key = publicKeyFrom(publicKey);
  if (!key) return false;
  const digest = key.asymmetricKeyType === 'ed25519' ? null : 'sha256';
  try {
    return verify(digest, Buffer.concat([device, sha256(clientData)]), key, signature);
  } catch {
    return false;
  }
};
