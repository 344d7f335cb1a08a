/** A calculation as it was used: the row of the registry and exactly what it was given, beside the answer. */
import type { Outcome } from '../outcome.ts';
import type { AnyCalculation, Calculation } from './calculation.ts';
import type { Field, InputOf } from './describe.ts';

/** Anybody can work it out again from this. */
export interface Working {
  readonly calculation: AnyCalculation;
  readonly input: Readonly<Record<string, unknown>>;
}

export const worked = <const I extends readonly Field[], R>(
  row: Calculation<I, R>,
  input: InputOf<I>,
): { readonly working: Working; readonly outcome: Outcome<R> } => ({
  working: { calculation: row, input: input as Readonly<Record<string, unknown>> },
  outcome: row.calculate(input),
});
