/**
 * One outcome measure or finding, with all that is known of it: what is recorded of it and within which bounds,
 * when a value is asked about, how it reads, and what its course says. The list of them is `registry.ts`.
 *
 * Bounds refuse a value as impossible; a narrower usual range and a distance from the last value ask whether it
 * is right. All three are choices of this project, wide on purpose: a slip of typing, not a judgement. None
 * gates treatment.
 */
import type { AnyCalculation } from '#core/calculations/calculation.ts';
import type { Field, InputOf } from '#core/calculations/describe.ts';
import type { Refusal } from '#core/outcome.ts';
import type { Day } from '#core/time/day.ts';
import type { CourseBySubject, CourseLines } from '../course/measured.ts';
import type { SidesOf } from '../course/sides-of.ts';

type Flat<T> = { readonly [N in keyof T]: T[N] };

/** One taking of a measure: its kind, the day, and its fields. */
export type RowOf<K extends string, F extends readonly Field[]> = Flat<
  { readonly kind: K; readonly day: Day } & InputOf<F>
>;

/** Name of a field, and the range outside which it is confirmed before it is kept. */
interface UsualRange {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

export interface Measure<K extends string, F extends readonly Field[], R> {
  /** Kebab-case, stored with each row; fixed once published. */
  readonly kind: K;
  readonly title: string;
  /** Its questions are somebody’s: it is offered only where the clinic says that it holds a licence. */
  readonly needsLicence?: true;
  /** Nobody expects it of everyone: papers do not list it among what was not measured. */
  readonly isChosen?: true;
  readonly fields: F;
  readonly usual?: readonly UsualRange[];
  /** What to know while entering a field, by its name. */
  readonly hints?: Readonly<Record<string, string>>;
  /** Fields that say what was measured and how: only rows alike in all of them are the same thing. */
  readonly sameBy?: readonly (keyof R & string)[];
  /** What was measured, beside side and limb: the exercise, the activity. */
  readonly subject?: (row: R) => string;
  /** The figure by which two rows are compared in the file. */
  readonly figure: (row: R) => number;
  /** Values this many percent away from the last ones of the same thing are asked about; left out = never. */
  readonly farFromLast?: {
    readonly percent: number;
    readonly figures: (row: R) => readonly { readonly value: number; readonly unit: string }[];
  };
  /** What cannot be, though each field is within its bounds. */
  readonly consistent?: (row: R) => readonly Refusal[];
  /** Further questions before a row is kept. */
  readonly asks?: (row: R) => readonly string[];
  /** In one line, with unit and how it was taken. */
  readonly inWords: (row: R) => string;
  /** What is said of it over the course of care; rows oldest first. Left out = nothing. */
  readonly course?: CourseBySubject<R> | CourseLines<R>;
  /** How its two sides are compared; left out = they are not. */
  readonly sides?: SidesOf<R>;
  /** Calculations of this measure alone. */
  readonly calculations?: readonly AnyCalculation[];
}

/** Keeps the literal types of the fields, so that each function is typed from them. */
export const measure = <const K extends string, const F extends readonly Field[]>(
  one: Measure<K, F, RowOf<K, F>>,
): Measure<K, F, RowOf<K, F>> => one;

/** With its types erased, as whoever holds a row of any kind finds it. */
// biome-ignore lint/suspicious/noExplicitAny: measures of many row types stand in one list; a row finds its own by its kind.
export type AnyMeasure = Measure<string, readonly Field[], any>;
