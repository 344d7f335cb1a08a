/** What is in an encrypted backup, taken out again; each chunk is proven before a byte of it is written. */
import { createDecipheriv } from 'node:crypto';
import { closeSync, mkdirSync, openSync, readSync } from 'node:fs';
import path from 'node:path';
import {
  beginningOf,
  boundTo,
  chunkBytes,
  fingerprintOfBackupKey,
  nonceAt,
  ownKey,
  tagBytes,
  writeAll,
} from './encrypted-file.ts';

/** Of what is not as it was written; nothing more can be said of it, by design. */
export class Unopened extends Error {
  readonly is: 'other-key' | 'other-bytes';
  constructor(message: string, is: 'other-key' | 'other-bytes' = 'other-bytes') {
    super(message);
    this.is = is;
  }
}

function* chunksOf(handle: number, key: Buffer, line: string): Generator<Buffer> {
  const part = Buffer.alloc(chunkBytes + tagBytes);
  let at = Buffer.byteLength(line);
  for (let place = 0; ; place += 1) {
    const read = readSync(handle, part, 0, part.length, at);
    at += read;
    const isLast = read < part.length || readSync(handle, Buffer.alloc(1), 0, 1, at) === 0;
    if (read < tagBytes) throw new Unopened('its end is missing');
    const decipher = createDecipheriv('aes-256-gcm', key, nonceAt(place), { authTagLength: tagBytes });
    decipher.setAAD(boundTo(line, isLast));
    decipher.setAuthTag(part.subarray(read - tagBytes, read));
    let plain: Buffer;
    try {
      plain = Buffer.concat([decipher.update(part.subarray(0, read - tagBytes)), decipher.final()]);
    } catch {
      throw new Unopened(`chunk ${place + 1} was changed, moved or cut off`);
    }
    yield plain;
    if (isLast) return;
  }
}

interface Inside {
  readonly name: string;
  readonly bytes: number;
}

/** Files as they come out of the chunks, each written as far as it has come. */
const filesInto = (folder: string) => {
  let held = Buffer.alloc(0);
  let open: { readonly handle: number; left: number } | null = null;
  const begin = (): boolean => {
    const end = held.indexOf('\n');
    if (end < 0) return false;
    const { name, bytes } = JSON.parse(held.subarray(0, end).toString('utf8')) as Inside;
    const file = path.join(folder, name);
    if (path.relative(folder, file).startsWith('..')) throw new Unopened('it names a place outside');
    mkdirSync(path.dirname(file), { recursive: true, mode: 0o700 });
    open = { handle: openSync(file, 'wx', 0o600), left: bytes };
    held = held.subarray(end + 1);
    return true;
  };
  const close = (): void => {
    if (open) closeSync(open.handle);
    open = null;
  };
  return {
    add: (bytes: Buffer): void => {
      held = Buffer.concat([held, bytes]);
      while (open || begin()) {
        const part = held.subarray(0, open!.left);
        writeAll(open!.handle, part);
        held = held.subarray(part.length);
        open!.left -= part.length;
        if (open!.left > 0) return;
        close();
      }
    },
    close,
  };
};

/** Takes the files out again into a folder of their own. Throws `Unopened` where a chunk is not as it was written. */
export const decryptFiles = (from: string, folder: string, key: Uint8Array): void => {
  const handle = openSync(from, 'r');
  const files = filesInto(folder);
  try {
    const begun = beginningOf(handle);
    if (!begun) throw new Unopened('its beginning is no encrypted backup');
    if (begun.is.key !== fingerprintOfBackupKey(key))
      throw new Unopened('it was encrypted with another key', 'other-key');
    for (const plain of chunksOf(handle, ownKey(key, begun.is), begun.line)) files.add(plain);
  } finally {
    files.close();
    closeSync(handle);
  }
};
