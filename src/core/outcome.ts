/** Results as values: an expected refusal is returned with its reason, never thrown. */

export const refusalCodes = [
  'not-json',
  'unknown-calculation',
  'missing',
  'unknown-field',
  'wrong-type',
  'too-low',
  'too-high',
  'not-listed',
  'inconsistent',
  'outside-validity',
  'too-long',
] as const;
export type RefusalCode = (typeof refusalCodes)[number];

export interface Refusal {
  /** Path of the field, from "input" down: "input.loadKg", "input.facts.painBefore". */
  readonly field: string;
  readonly code: RefusalCode;
  /** A sentence that says how to put it right. */
  readonly reason: string;
}

export interface Note {
  readonly code: string;
  readonly text: string;
}

export type Outcome<R> =
  | { readonly ok: true; readonly result: R; readonly notes: readonly Note[] }
  | { readonly ok: false; readonly refused: readonly Refusal[] };

export const answer = <R>(result: R, notes: readonly Note[] = []): Outcome<R> => ({
  ok: true,
  result,
  notes,
});

export const refuse = (field: string, code: RefusalCode, reason: string): Outcome<never> => ({
  ok: false,
  refused: [{ field: `input.${field}`, code, reason }],
});
