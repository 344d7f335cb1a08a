/** Mutants that no test can notice, because nothing that is decided differs; each with its reason. */
export interface Equivalent {
  readonly file: string;
  /** The line as it stands, and as the mutant has it; blanks at the ends left out. */
  readonly line: string;
  readonly mutant: string;
  readonly reason: string;
}

export const equivalentMutants: readonly Equivalent[] = [
  {
    file: 'src/core/decision/facts/joint-facts.ts',
    line: 'painCeiling: Math.min(7, Math.max(5, baseline?.acceptablePainLimit ?? 5)),',
    mutant: 'painCeiling: Math.min(7, Math.max(5, baseline?.acceptablePainLimit ?? 4)),',
    reason: 'No limit on record is brought up to 5 by the bound beside it.',
  },
  ...['0', '2'].map((least) => ({
    file: 'src/core/decision/dose/ease-back.ts',
    line: '(count) => count >= 1 && isWithinCut(count / repetitions),',
    mutant: `(count) => count >= ${least} && isWithinCut(count / repetitions),`,
    reason: 'Neither 0 nor 1 repetition is ever 70 to 80 % of a whole number of them.',
  })),
];
