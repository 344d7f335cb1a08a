/** A device that holds one passkey: it signs what a browser would hand it, or what a test makes of that. */
import { createHash, generateKeyPairSync, type KeyObject, randomBytes, sign } from 'node:crypto';

const sha256 = (data: Uint8Array | string) => createHash('sha256').update(data).digest();

export interface Said {
  readonly type?: string;
  readonly origin?: string;
  readonly host?: string;
  readonly crossOrigin?: boolean;
  /** User present 1, user verified 4, holds a new key 64. */
  readonly flags?: number;
  readonly counter?: number;
}

const kinds = {
  p256: () => generateKeyPairSync('ec', { namedCurve: 'prime256v1' }),
  p384: () => generateKeyPairSync('ec', { namedCurve: 'secp384r1' }),
  ed25519: () => generateKeyPairSync('ed25519'),
  rsa2048: () => generateKeyPairSync('rsa', { modulusLength: 2048 }),
  rsa1024: () => generateKeyPairSync('rsa', { modulusLength: 1024 }),
} as const;

export const passkeyDevice = (origin: string, kind: keyof typeof kinds = 'p256') => {
  const pair = kinds[kind]() as { publicKey: KeyObject; privateKey: KeyObject };
  const id = randomBytes(32);
  const host = new URL(origin).hostname;
  const clientData = (challenge: string, type: string, said: Said) =>
    Buffer.from(
      JSON.stringify({
        type: said.type ?? type,
        challenge: Buffer.from(challenge).toString('base64url'),
        origin: said.origin ?? origin,
        crossOrigin: said.crossOrigin ?? false,
      }),
    );
  const authenticatorData = (said: Said, flags: number, more: Buffer) => {
    const counter = Buffer.alloc(4);
    counter.writeUInt32BE(said.counter ?? 0);
    return Buffer.concat([sha256(said.host ?? host), Buffer.from([said.flags ?? flags]), counter, more]);
  };
  const text = (bytes: Buffer) => bytes.toString('base64url');
  return {
    id: text(id),
    make: (challenge: string, said: Said = {}) => {
      const length = Buffer.alloc(2);
      length.writeUInt16BE(id.length);
      const held = Buffer.concat([Buffer.alloc(16), length, id]);
      return {
        clientData: text(clientData(challenge, 'webauthn.create', said)),
        authenticatorData: text(authenticatorData(said, 0x45, held)),
        publicKey: text(pair.publicKey.export({ format: 'der', type: 'spki' })),
      };
    },
    use: (challenge: string, said: Said = {}) => {
      const client = clientData(challenge, 'webauthn.get', said);
      const device = authenticatorData(said, 0x05, Buffer.alloc(0));
      const digest = kind === 'ed25519' ? null : 'sha256';
      const signature = sign(digest, Buffer.concat([device, sha256(client)]), pair.privateKey);
      return {
        id: text(id),
        clientData: text(client),
        authenticatorData: text(device),
        signature: text(signature),
      };
    },
  };
};
