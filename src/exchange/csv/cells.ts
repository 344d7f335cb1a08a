/** Cells of a CSV file (RFC 4180), so that a spreadsheet takes none of them for a formula. */
import { stringify } from 'csv-stringify/sync';

/** What begins a formula, also in the wide form some keyboards type. */
const beginsFormula = /^\s*[=+\-@＝＋－＠]|^[\t\r]/;

/** An apostrophe before it: text alone is changed, a number is none. */
export const guarded = (text: string): string => (beginsFormula.test(text) ? `'${text}` : text);

export type Cell = string | number | null;

const written = (cell: Cell): string | number | null =>
  // A lone carriage return would end the row for some readers.
  typeof cell === 'string' ? guarded(cell.replace(/\r\n?/g, '\n')) : cell;

export const csvLines = (rows: readonly (readonly Cell[])[]): string =>
  stringify(
    rows.map((row) => row.map(written)),
    { record_delimiter: '\r\n', quoted_match: /[\r\n]/ },
  );

/** Tells a spreadsheet that what follows is UTF-8. */
export const byteOrderMark = '\uFEFF';
