/** Bytes as the text they were said to be. What contradicts it is told and never read as something else. */
import { type Bytes, CannotRead } from '../source.ts';
import type { Encoding } from './how.ts';

const startsWith = (bytes: Uint8Array, ...mark: readonly number[]): boolean =>
  mark.every((byte, place) => bytes[place] === byte);

const labelFor = (encoding: Encoding, first: Uint8Array): string => {
  const isWide = startsWith(first, 0xff, 0xfe) || startsWith(first, 0xfe, 0xff);
  if (isWide && encoding !== 'utf-16')
    throw new CannotRead(
      `The file begins with the mark of UTF-16, and was said to be ${encoding}. Say utf-16.`,
    );
  if (encoding === 'windows-1252' && startsWith(first, 0xef, 0xbb, 0xbf))
    throw new CannotRead(
      'The file begins with the mark of UTF-8, and was said to be windows-1252. Say utf-8.',
    );
  if (encoding !== 'utf-16') return encoding;
  if (!isWide)
    throw new CannotRead(
      'The file was said to be UTF-16 and does not begin with its mark. Say utf-8 or windows-1252.',
    );
  return startsWith(first, 0xfe, 0xff) ? 'utf-16be' : 'utf-16le';
};

const decoded = (decoder: TextDecoder, encoding: Encoding, bytes?: Uint8Array): string => {
  try {
    return bytes ? decoder.decode(bytes, { stream: true }) : decoder.decode();
  } catch {
    const other = encoding === 'utf-8' ? ' Say windows-1252 if it comes from an older program.' : '';
    throw new CannotRead(`The file holds bytes that are no ${encoding}.${other}`);
  }
};

/** Without the mark at the beginning. */
export async function* textOf(bytes: Bytes, encoding: Encoding): AsyncIterable<string> {
  let decoder: TextDecoder | null = null;
  for await (const chunk of bytes()) {
    decoder ??= new TextDecoder(labelFor(encoding, chunk), { fatal: true });
    yield decoded(decoder, encoding, chunk);
  }
  if (decoder) yield decoded(decoder, encoding);
}
