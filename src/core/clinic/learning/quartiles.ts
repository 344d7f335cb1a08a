/**
 * Quartiles by nearest rank: the smallest value that a quarter, a half or three quarters of all lie at or under. What is
 * still open counts as longer than everything known, so that waiting longer never makes a clinic look quicker.
 */
export interface Quartiles {
  /** Null where it lies among what is open, or where there is nothing. */
  readonly low: number | null;
  readonly middle: number | null;
  readonly high: number | null;
}

export const quartilesOf = (known: readonly number[], open = 0): Quartiles => {
  const ordered = known.toSorted((a, b) => a - b);
  const at = (part: number): number | null => {
    const rank = Math.ceil(part * (ordered.length + open));
    return ordered[Math.max(0, rank - 1)] ?? null;
  };
  return { low: at(0.25), middle: at(0.5), high: at(0.75) };
};
