import type { Calculation } from '#core/calculations/calculation.ts';
import type { Field, InputOf } from '#core/calculations/describe.ts';

/** The result of a row that must answer; a refusal fails the test with its reason. */
export const resultOf = <const I extends readonly Field[], R>(
  row: Calculation<I, R>,
  input: InputOf<I>,
): R => {
  const refusals = row.consistent?.(input) ?? [];
  const outcome = row.calculate(input);
  if (refusals.length > 0 || !outcome.ok) {
    throw new Error(JSON.stringify(outcome.ok ? refusals : outcome.refused));
  }
  return outcome.result;
};

interface PushUpInput {
  readonly sex: 'female' | 'male';
  readonly statureM: number;
  readonly handHeightM: number;
  readonly footHeightM: number;
  readonly support: 'feet' | 'knees';
}

export const pushUpInput = (changed: Partial<PushUpInput>): PushUpInput => ({
  sex: 'female',
  statureM: 1.7,
  handHeightM: 0,
  footHeightM: 0,
  support: 'feet',
  ...changed,
});
