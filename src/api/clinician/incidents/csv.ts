/** Tables as text of RFC 4180: every cell in quotes, so that commas and line breaks in it stay in it. */
import { guarded } from '#exchange/csv/cells.ts';

const cellOf = (text: string): string => `"${guarded(text).replaceAll('"', '""')}"`;

/** The heading is the first row. Whoever reads the file by a program takes the apostrophes of the guard away. */
export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows.map((cells) => `${cells.map(cellOf).join(',')}\r\n`).join('');
