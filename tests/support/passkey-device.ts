/**
 * A device that holds one passkey: it signs what a browser would hand it, or what a test makes of that. Its CBOR and
 * its COSE keys are written out here (RFC 8949, RFC 9053), by nothing of the library that reads them.
 */
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
  /** A statement of the maker, with a certificate. */
  readonly format?: string;
}

const kinds = {
  p256: () => generateKeyPairSync('ec', { namedCurve: 'prime256v1' }),
  p384: () => generateKeyPairSync('ec', { namedCurve: 'secp384r1' }),
  ed25519: () => generateKeyPairSync('ed25519'),
  rsa2048: () => generateKeyPairSync('rsa', { modulusLength: 2048 }),
  rsa1024: () => generateKeyPairSync('rsa', { modulusLength: 1024 }),
} as const;

type Cbor = number | string | Buffer | ReadonlyMap<number | string, Cbor>;

const head = (major: number, size: number): Buffer => {
  if (size < 24) return Buffer.from([(major << 5) | size]);
  if (size < 256) return Buffer.from([(major << 5) | 24, size]);
  return Buffer.from([(major << 5) | 25, size >> 8, size & 255]);
};

const cbor = (value: Cbor): Buffer => {
  if (typeof value === 'number') return value < 0 ? head(1, -1 - value) : head(0, value);
  if (typeof value === 'string')
    return Buffer.concat([head(3, Buffer.byteLength(value)), Buffer.from(value)]);
  if (Buffer.isBuffer(value)) return Buffer.concat([head(2, value.length), value]);
  return Buffer.concat([head(5, value.size), ...[...value].flatMap(([key, of]) => [cbor(key), cbor(of)])]);
};

/** Key type, algorithm and the numbers of the key. */
const coseKey = (kind: keyof typeof kinds, key: KeyObject): Buffer => {
  const jwk = key.export({ format: 'jwk' });
  const of = (text: string | undefined) => Buffer.from(text ?? '', 'base64url');
  const entries: readonly [number, number | Buffer][] =
    kind === 'ed25519'
      ? [
          [1, 1],
          [3, -8],
          [-1, 6],
          [-2, of(jwk.x)],
        ]
      : kind.startsWith('rsa')
        ? [
            [1, 3],
            [3, -257],
            [-1, of(jwk.n)],
            [-2, of(jwk.e)],
          ]
        : [
            [1, 2],
            [3, kind === 'p384' ? -35 : -7],
            [-1, kind === 'p384' ? 2 : 1],
            [-2, of(jwk.x)],
            [-3, of(jwk.y)],
          ];
  return cbor(new Map(entries));
};

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
  const named = { id: text(id), rawId: text(id), type: 'public-key', clientExtensionResults: {} };
  return {
    id: text(id),
    make: (challenge: string, said: Said = {}) => {
      const length = Buffer.alloc(2);
      length.writeUInt16BE(id.length);
      const held = Buffer.concat([Buffer.alloc(16), length, id, coseKey(kind, pair.publicKey)]);
      // What does not hold a key by its flags has none behind its count.
      const isHeld = ((said.flags ?? 0x45) & 0x40) !== 0;
      const device = authenticatorData(said, 0x45, isHeld ? held : Buffer.alloc(0));
      return {
        ...named,
        response: {
          clientDataJSON: text(clientData(challenge, 'webauthn.create', said)),
          attestationObject: text(
            cbor(
              new Map<string, Cbor>([
                ['fmt', said.format ?? 'none'],
                ['attStmt', said.format ? new Map([['x5c', Buffer.from('a certificate')]]) : new Map()],
                ['authData', device],
              ]),
            ),
          ),
        },
      };
    },
    use: (challenge: string, said: Said = {}) => {
      const client = clientData(challenge, 'webauthn.get', said);
      const device = authenticatorData(said, 0x05, Buffer.alloc(0));
      const digest = kind === 'ed25519' ? null : 'sha256';
      const signature = sign(digest, Buffer.concat([device, sha256(client)]), pair.privateKey);
      return {
        ...named,
        response: {
          clientDataJSON: text(client),
          authenticatorData: text(device),
          signature: text(signature),
        },
      };
    },
  };
};
