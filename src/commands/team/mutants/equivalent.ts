/** Mutants that no test can kill, because nothing that is decided differs; each with its reason. */
export interface Equivalent {
  readonly file: string;
  /** The whole line as it stands, blanks at its ends left out. */
  readonly line: string;
  readonly before: string;
  readonly after: string;
  readonly reason: string;
}

export const equivalentMutants: readonly Equivalent[] = [];
