/** A paper of parts, each a heading with lines under it, and advice kept apart from what the record says. */
import type { CareDocument } from '#core/episode/documents/document-words.ts';

interface SheetTable {
  readonly heads: readonly string[];
  /** Shares of the width; left out = as wide as what stands in them. */
  readonly widths?: readonly number[];
  readonly rows: readonly (readonly string[])[];
}

type Part = CareDocument['parts'][number] & { readonly table?: SheetTable };

export interface SheetPaper extends Omit<CareDocument, 'parts' | 'signature'> {
  readonly clinic: string;
  readonly parts: readonly Part[];
  /** As long as it has to be: no smaller type is tried for fewer pages. */
  readonly isLong?: boolean;
  /** null = nobody signs it. */
  readonly signature: string | null;
}
