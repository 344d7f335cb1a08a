/** Files encrypted as one: whole, or refused with what is wrong. */
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { encryptFiles } from '#data/backup/encrypted-file.ts';
import { decryptFiles } from '#data/backup/open-encrypted.ts';

const key = Buffer.from('0123456789abcdef'.repeat(4), 'hex');
const chunk = (1 << 20) + 16;

describe('files encrypted as one', () => {
  let folder: string;
  beforeEach(() => {
    folder = fs.mkdtempSync(path.join(tmpdir(), 'loadgate-encrypted-'));
  });
  afterEach(() => fs.rmSync(folder, { recursive: true }));
  const packed = (contents: Readonly<Record<string, Buffer>>): string => {
    const from = path.join(folder, 'from');
    for (const [name, bytes] of Object.entries(contents)) {
      fs.mkdirSync(path.dirname(path.join(from, name)), { recursive: true });
      fs.writeFileSync(path.join(from, name), bytes);
    }
    const target = path.join(folder, 'packed');
    encryptFiles(from, Object.keys(contents), target, key);
    return target;
  };
  const opened = (target: string, with_ = key): Record<string, Buffer> => {
    const to = fs.mkdtempSync(path.join(folder, 'to-'));
    decryptFiles(target, to, with_);
    const names = fs.readdirSync(to, { recursive: true, encoding: 'utf8' });
    const files = names.filter((name) => fs.statSync(path.join(to, name)).isFile());
    return Object.fromEntries(files.map((name) => [name, fs.readFileSync(path.join(to, name))]));
  };

  it.each([
    ['nothing in them', { a: Buffer.alloc(0), 'b/c': Buffer.alloc(0) }],
    ['a few bytes', { a: Buffer.from('word'), 'b/c': Buffer.from('more') }],
    [
      'a chunk less one byte, a chunk, and one byte more',
      {
        a: Buffer.alloc((1 << 20) - 1, 1),
        b: Buffer.alloc(1 << 20, 2),
        c: Buffer.alloc((1 << 20) + 1, 3),
      },
    ],
  ])('with %s come out as they went in, and nothing of them can be read in it', (_, contents) => {
    const target = packed(contents);
    const out = opened(target);
    expect(Object.keys(out).sort()).toEqual(Object.keys(contents).sort());
    // Compared by themselves: shown one by one, millions of bytes take a minute.
    for (const [name, bytes] of Object.entries(contents))
      expect([name, out[name]!.equals(bytes)]).toEqual([name, true]);
    expect(fs.readFileSync(target).includes('word')).toBe(false);
    expect(fs.statSync(target).mode & 0o077).toBe(0);
  });

  it.each([
    ['another key', (bytes: Buffer) => bytes, /with another key/],
    [
      'a byte changed',
      (bytes: Buffer) => bytes.fill(bytes[2_000_000]! ^ 1, 2_000_000, 2_000_001),
      /chunk 2 was/,
    ],
    [
      'its last chunk cut off',
      (bytes: Buffer, start: number) => bytes.subarray(0, start + 2 * chunk),
      /chunk 2 was/,
    ],
    ['its last byte cut off', (bytes: Buffer) => bytes.subarray(0, -1), /chunk 3 was/],
    ['only its beginning left', (bytes: Buffer, start: number) => bytes.subarray(0, start), /end is missing/],
    ['nothing left', () => Buffer.alloc(0), /no encrypted backup/],
    [
      'two chunks changed about',
      (bytes: Buffer, start: number) =>
        Buffer.concat([
          bytes.subarray(0, start),
          bytes.subarray(start + chunk, start + 2 * chunk),
          bytes.subarray(start, start + chunk),
          bytes.subarray(start + 2 * chunk),
        ]),
      /chunk 1 was/,
    ],
    [
      'a chunk left out',
      (bytes: Buffer, start: number) =>
        Buffer.concat([bytes.subarray(0, start + chunk), bytes.subarray(start + 2 * chunk)]),
      /chunk 2 was/,
    ],
    ['bytes added', (bytes: Buffer) => Buffer.concat([bytes, Buffer.alloc(20)]), /chunk 3 was/],
    [
      'its beginning changed',
      (bytes: Buffer) => Buffer.from(bytes.toString('latin1').replace(/"salt":"./, '"salt":"g'), 'latin1'),
      /no encrypted backup/,
    ],
  ] as const)('with %s are refused', (what, spoil, reason) => {
    const target = packed({ a: Buffer.alloc(2_500_000, 7) });
    const bytes = fs.readFileSync(target);
    fs.writeFileSync(target, spoil(bytes, bytes.indexOf('\n') + 1));
    const other = what === 'another key' ? Buffer.from('ff'.repeat(32), 'hex') : key;
    expect(() => opened(target, other)).toThrow(reason);
  });
});
