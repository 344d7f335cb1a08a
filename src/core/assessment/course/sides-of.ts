/** What a measure says of itself so that its two sides can be held against each other. */
import type { Side } from '#core/exercises/joints.ts';
import type { Figure } from './drawn.ts';

export interface SidesOf<R> {
  /** What was measured, without its side. */
  readonly subject: (row: R) => string;
  /** null = of neither side, or of both. */
  readonly side: (row: R) => Side | null;
  /** null = no figure comes of this row. */
  readonly figure: (row: R) => Figure | null;
  /** With a space before it where it needs one. */
  readonly unit: string;
  /** Zero is none of it, so that a share of the other side means something. */
  readonly isRatio: boolean;
  /** null = not known. */
  readonly error: { readonly figure: number; readonly words: string } | null;
}
