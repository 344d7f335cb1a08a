/** A paper of parts, each a heading with lines under it, and advice kept apart from what the record says. */
import type { CareDocument } from '#core/episode/documents/document-words.ts';

export interface SheetTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

type Part = CareDocument['parts'][number] & { readonly table?: SheetTable };

export interface SheetPaper extends Omit<CareDocument, 'parts' | 'signature'> {
  readonly clinic: string;
  readonly parts: readonly Part[];
  /** null = nobody signs it. */
  readonly signature: string | null;
}
