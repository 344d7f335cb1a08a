/**
 * Digests of the record's rows, kept in the audit row of the write that put them in. Made with the key
 * outside the file, so that they give nothing of a row away and nobody without the key can make one.
 */
import { createHmac } from 'node:crypto';
import type { InsertedRow } from '../database/statements.ts';

/** 96 bits, as text. */
const digestLength = 16;

/** Of what is in a row, whatever the order of its columns; one added later is null in it and changes nothing. */
export const digestOfRow = (key: Uint8Array, { table, row }: InsertedRow): string => {
  const filled = Object.entries(row).filter(([, value]) => value !== null);
  filled.sort(([one], [other]) => (one < other ? -1 : 1));
  return createHmac('sha256', key)
    .update(JSON.stringify([table, filled]))
    .digest('base64url')
    .slice(0, digestLength);
};

/** By table, the digests of its rows one after another. */
export type WrittenRows = Readonly<Record<string, string>>;

export const digestsOf = (key: Uint8Array, rows: readonly InsertedRow[]): WrittenRows => {
  const written: Record<string, string> = {};
  for (const one of rows) written[one.table] = (written[one.table] ?? '') + digestOfRow(key, one);
  return written;
};

/** Those of a write, and those it wrote after. */
export const together = (one: WrittenRows, more: WrittenRows): WrittenRows => ({
  ...one,
  ...Object.fromEntries(Object.entries(more).map(([table, text]) => [table, (one[table] ?? '') + text])),
});

export const digestsIn = (text: string): readonly string[] =>
  text.match(new RegExp(`.{${digestLength}}`, 'g')) ?? [];
