/** Tables as text of RFC 4180: every cell in quotes, so that commas and line breaks in it stay in it. */

/**
 * What a spreadsheet may take for a formula (from memory), also behind blanks and in full width. An apostrophe in
 * front makes it text; whoever reads the file by a program takes it away.
 */
const formulaLike = /^\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/;

const cellOf = (text: string): string =>
  `"${(formulaLike.test(text) ? `'${text}` : text).replaceAll('"', '""')}"`;

/** The heading is the first row. */
export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows.map((cells) => `${cells.map(cellOf).join(',')}\r\n`).join('');
