/** The result of an outcome that must have been answered; a refusal fails the test with its reason. */
import type { Outcome } from '#core/outcome.ts';

export const resultOf = <R>(outcome: Outcome<R>): R => {
  if (!outcome.ok) throw new Error(outcome.refused.map(({ reason }) => reason).join(' '));
  return outcome.result;
};

export const codesOf = (outcome: Outcome<unknown>): readonly string[] =>
  outcome.ok
    ? outcome.notes.map(({ code }) => code)
    : outcome.refused.map(({ field, code }) => `${field} ${code}`);
