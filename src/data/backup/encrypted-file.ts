/**
 * Some files as one, encrypted and authenticated. A chunk is bound to its place, to whether it is the last and to
 * what stands at the beginning: none can be changed, left out, doubled, moved or put in from another such file.
 *
 * A line of JSON with a random salt and the fingerprint of the key; then chunks of a fixed size, each AES-256-GCM
 * under a key made from the backup key and the salt, its place as the nonce. Inside stand the files one after
 * another, each behind a line of JSON with its name and length.
 */
import { createCipheriv, createHmac, hkdfSync, randomBytes } from 'node:crypto';
import { closeSync, fsyncSync, openSync, readSync, statSync, writeSync } from 'node:fs';
import path from 'node:path';

export const chunkBytes = 1 << 20;
export const tagBytes = 16;
const longestLine = 1000;

interface Beginning {
  readonly format: 'loadgate-encrypted-backup-1';
  readonly salt: string;
  readonly key: string;
}

export const fingerprintOfBackupKey = (key: Uint8Array): string =>
  createHmac('sha256', key).update('fingerprint of the backup key').digest('hex').slice(0, 32);

export const ownKey = (key: Uint8Array, { salt }: Beginning): Buffer =>
  Buffer.from(hkdfSync('sha256', key, Buffer.from(salt, 'hex'), 'chunks of a backup', 32));

export const nonceAt = (place: number): Buffer => {
  const nonce = Buffer.alloc(12);
  nonce.writeBigUInt64BE(BigInt(place), 4);
  return nonce;
};

export const boundTo = (line: string, isLast: boolean): Buffer =>
  Buffer.from(`${line}${isLast ? 'the last' : 'one before'}`);

export const writeAll = (handle: number, bytes: Uint8Array): void => {
  for (let done = 0; done < bytes.length; ) done += writeSync(handle, bytes, done);
};

/** Takes bytes of any length and writes chunks; `end` writes the last. */
const chunksInto = (handle: number, key: Buffer, line: string) => {
  let held: Buffer[] = [];
  let length = 0;
  let place = 0;
  const put = (plain: Buffer, isLast: boolean): void => {
    const cipher = createCipheriv('aes-256-gcm', key, nonceAt(place), { authTagLength: tagBytes });
    cipher.setAAD(boundTo(line, isLast));
    writeAll(handle, Buffer.concat([cipher.update(plain), cipher.final(), cipher.getAuthTag()]));
    place += 1;
  };
  return {
    add: (bytes: Uint8Array): void => {
      held.push(Buffer.from(bytes));
      length += bytes.length;
      if (length <= chunkBytes) return;
      let all = Buffer.concat(held);
      for (; all.length > chunkBytes; all = all.subarray(chunkBytes)) put(all.subarray(0, chunkBytes), false);
      held = [all];
      length = all.length;
    },
    end: (): void => put(Buffer.concat(held), true),
  };
};

const eachPart = (file: string, take: (bytes: Uint8Array) => void): void => {
  const part = Buffer.alloc(chunkBytes);
  const handle = openSync(file, 'r');
  try {
    for (let read = readSync(handle, part); read > 0; read = readSync(handle, part))
      take(part.subarray(0, read));
  } finally {
    closeSync(handle);
  }
};

/** Puts files, by their names under `folder`, into one at `target`, which must not be there; on the disk when done. */
export const encryptFiles = (
  folder: string,
  names: readonly string[],
  target: string,
  key: Uint8Array,
): void => {
  const beginning: Beginning = {
    format: 'loadgate-encrypted-backup-1',
    salt: randomBytes(32).toString('hex'),
    key: fingerprintOfBackupKey(key),
  };
  const line = `${JSON.stringify(beginning)}\n`;
  const handle = openSync(target, 'wx', 0o600);
  try {
    writeAll(handle, Buffer.from(line));
    const chunks = chunksInto(handle, ownKey(key, beginning), line);
    for (const name of names) {
      const file = path.join(folder, name);
      chunks.add(Buffer.from(`${JSON.stringify({ name, bytes: statSync(file).size })}\n`));
      eachPart(file, chunks.add);
    }
    chunks.end();
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
};

export const beginningOf = (handle: number): { readonly line: string; readonly is: Beginning } | null => {
  const bytes = Buffer.alloc(longestLine);
  const read = readSync(handle, bytes, 0, longestLine, 0);
  const end = bytes.subarray(0, read).indexOf('\n');
  if (end < 0) return null;
  const line = bytes.subarray(0, end + 1).toString('utf8');
  try {
    const is = JSON.parse(line) as Beginning;
    return is.format === 'loadgate-encrypted-backup-1' && /^[0-9a-f]{64}$/.test(is.salt)
      ? { line, is }
      : null;
  } catch {
    return null;
  }
};

/** Fingerprint of the key a file was encrypted with; null where it is no such file. */
export const encryptedWith = (file: string): string | null => {
  const handle = openSync(file, 'r');
  try {
    return beginningOf(handle)?.is.key ?? null;
  } finally {
    closeSync(handle);
  }
};
