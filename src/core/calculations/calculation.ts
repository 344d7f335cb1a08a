import type { Outcome, Refusal } from '../outcome.ts';
import type { Citation } from '../sources/citation.ts';
import type { Field, InputOf } from './describe.ts';

/** One row of the registry: everything the pages, the tests and the desk need to know of a calculation. */
export interface Calculation<I extends readonly Field[] = readonly Field[], R = unknown> {
  /** Kebab-case, fixed once published. */
  readonly id: string;
  readonly title: string;
  readonly area: Area;
  readonly input: I;
  /** Result fields with units, for tables and `--list`. Descriptive, not validated. */
  readonly result: readonly ResultField[];
  readonly citations: readonly Citation[];
  /** Refusals that need more than one field; run after each field has passed on its own. */
  readonly consistent?: (input: InputOf<I>) => readonly Refusal[];
  /** Pure. Numbers unrounded; rounding is for screens. */
  readonly calculate: (input: InputOf<I>) => Outcome<R>;
  /** Inputs that show the row at work, for the try-it page and smoke tests. */
  readonly example: InputOf<I>;
}

export interface ResultField {
  readonly name: string;
  /** UCUM code, '1' for a pure number, '' for words. */
  readonly unit: string;
  readonly about?: string;
}

/** Result fields that their names explain, each with its unit. */
export const units = (fields: Readonly<Record<string, string>>): readonly ResultField[] =>
  Object.entries(fields).map(([name, unit]) => ({ name, unit }));

export type Area =
  | 'strength'
  | 'variation'
  | 'occlusion'
  | 'screening'
  | 'nutrition'
  | 'monitoring'
  | 'outcomes'
  | 'series'
  | 'engine';

/** Keeps the literal types of the descriptor so that `calculate` is typed from it. */
export const calculation = <const I extends readonly Field[], R>(row: Calculation<I, R>): Calculation<I, R> =>
  row;

/** A row with its types erased, as the registry holds it. */
// biome-ignore lint/suspicious/noExplicitAny: rows of many input types stand in one list; the desk validates before calling.
export type AnyCalculation = Calculation<any, any>;
