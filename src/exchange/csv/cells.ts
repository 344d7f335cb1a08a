/** Cells of a CSV file (RFC 4180), so that a spreadsheet takes none of them for a formula. */
import { stringify } from 'csv-stringify/sync';

/** What begins a formula, also in the wide form some keyboards type. */
const beginsFormula = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/;

/**
 * The same where a spreadsheet that parts cells at `;` or tabs begins one in the middle of a text: it does not know
 * the quotes of the file for its own, so that line ends count as well, and a quote may stand before the formula.
 */
const beginsFormulaLater = /([;\t\r\n])(?=(?:[^\S\t\r\n]|")*[=+\-@＝＋－＠])/g;

/** An apostrophe before each: text alone is changed, a number is none. */
export const guarded = (text: string): string => {
  const inside = text.replace(beginsFormulaLater, "$1'");
  return beginsFormula.test(text) ? `'${inside}` : inside;
};

const guardAtBegin = /^'(?=\s*[=+\-@＝＋－＠]|[\t\r\n])/;
const guardLater = /([;\t\r\n])'(?=(?:[^\S\t\r\n]|")*[=+\-@＝＋－＠])/g;

/** The text as it was before. One that was written with such an apostrophe of its own loses it, here and ever after. */
export const unguarded = (text: string): string => text.replace(guardAtBegin, '').replace(guardLater, '$1');

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
