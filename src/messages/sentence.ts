/**
 * The shape of a sentence for patients, and what it needs to be filled in.
 *
 * Values stand in braces: `{joint}`, or `{joint:your}` in a form that the language knows. English is the
 * source of the names; a value left out, misnamed or of another kind does not compile.
 */

import type { Joint, Limb, Side } from '#core/exercises/joints.ts';
import type { Day } from '#core/time/day.ts';

/**
 * A sentence that differs by a value: by a number with its plural category ("one", "other"), by a joint
 * with its name ("knee"), by any other text with that text. `other` is said where no case fits.
 */
interface Cases {
  readonly by: string;
  readonly other: string;
  readonly [value: string]: string;
}

export type Sentence = string | Cases;

export interface ExerciseSentences {
  readonly name: string;
  /** What to do, in order. */
  readonly steps: readonly string[];
}

export type SidedLimb = `${Side}-${Limb}`;

/** Values of a kind of their own, by the name of their slot. All others are texts or numbers. */
interface FormedValues {
  readonly joint: Joint;
  readonly limb: SidedLimb;
  readonly day: Day;
}

type NameOf<S extends string> = S extends `${infer Name}:${string}` ? Name : S;
type SlotsIn<S extends string> = S extends `${string}{${infer Slot}}${infer Rest}`
  ? NameOf<Slot> | SlotsIn<Rest>
  : never;

/** Names of the values that a sentence needs. */
type SlotsOf<S> = S extends string
  ? SlotsIn<S>
  : S extends { readonly by: infer By extends string; readonly other: infer Other extends string }
    ? By | SlotsIn<Other>
    : never;

type ValueOf<Name> = Name extends keyof FormedValues ? FormedValues[Name] : string | number;

/** `More` is what a value may be besides, such as a text in every language. */
type ValuesOf<S, More = never> = { readonly [Name in SlotsOf<S>]: ValueOf<Name> | More };

/** Arguments after the sentence: none where it has no slot. */
export type Args<S, More = never> = [SlotsOf<S>] extends [never] ? [] : [values: ValuesOf<S, More>];

/** The same keys in another language. */
export type Same<English> = { readonly [Key in keyof English]: Sentence };
