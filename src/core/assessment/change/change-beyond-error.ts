/**
 * A change between two measurements is called a change only when it is beyond the error of measuring.
 *
 * "Beyond" is strictly more than the minimal detectable change: equality is still error. A tolerance of one
 * billionth keeps decimal scores (3.4 − 2.3) from crossing the bound by rounding alone.
 */
const tolerance = 1e-9;

/** Strictly more than the bound, rounding of decimals aside. */
export const exceeds = (value: number, bound: number): boolean => value - bound > tolerance;

export interface JudgedChange {
  readonly change: number;
  readonly minimalDetectableChange: number;
  readonly beyondError: boolean;
  readonly direction: 'better' | 'worse' | 'within-error';
}

export const judgeChange = (
  before: number,
  after: number,
  minimalDetectableChange: number,
  better: 'higher' | 'lower',
): JudgedChange => {
  const change = after - before;
  const beyondError = exceeds(Math.abs(change), minimalDetectableChange);
  const improved = better === 'higher' ? change > 0 : change < 0;
  return {
    change,
    minimalDetectableChange,
    beyondError,
    direction: beyondError ? (improved ? 'better' : 'worse') : 'within-error',
  };
};

export const judgedChangeFields = (unit: string) =>
  [
    { name: 'change', unit, about: 'after less before' },
    { name: 'minimalDetectableChange', unit },
    { name: 'beyondError', unit: '' },
    { name: 'direction', unit: '', about: 'better, worse or within-error' },
  ] as const;
