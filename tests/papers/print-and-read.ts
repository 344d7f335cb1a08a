/** A paper of parts, set and read back. */
import type { Look } from '#papers/look.ts';
import { printSheet } from '#papers/sheet/print-sheet.ts';
import type { SheetPaper } from '#papers/sheet/sheet-paper.ts';
import { readPdf } from '#tests/papers/read-pdf.ts';
import { look } from './plan-papers.ts';

export const printed = async (sheet: SheetPaper, over: Partial<Look> = {}) => {
  const made = await printSheet(sheet, { ...look, ...over });
  const read = await readPdf(made.pdf);
  return { ...made, read, all: read.text.join(' ') };
};

/** What somebody may type, and how it has to come out. */
export const hostile = '#read("/etc/passwd") *bold* $y$ <tag> \u202eleft \u{1F9B5}';
export const inert = '#read("/etc/passwd") *bold* $y$ <tag> ▯left ▯';
