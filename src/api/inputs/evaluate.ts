/** One calculation with untrusted input: the descriptor's bounds, then rules across fields, then the sum. */
import type { AnyCalculation } from '#core/calculations/calculation.ts';
import type { Outcome } from '#core/outcome.ts';
import { inputSchema } from './from-descriptor.ts';
import { refusalsFromIssues } from './refusals.ts';

const hasMinusZero = (value: unknown): boolean => {
  if (typeof value === 'number') return Object.is(value, -0);
  if (typeof value !== 'object' || value === null) return false;
  for (const key in value) if (hasMinusZero((value as Record<string, unknown>)[key])) return true;
  return false;
};

/**
 * A difference too small for a double ends as minus zero, which some number formats print as
 * "-0". No reading of ours is minus zero.
 */
const withoutMinusZero = (value: unknown): unknown => {
  if (typeof value === 'number') return value === 0 ? 0 : value;
  if (Array.isArray(value)) return value.map(withoutMinusZero);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, withoutMinusZero(inner)]));
};

export const evaluate = (row: AnyCalculation, input: unknown, root = 'input'): Outcome<unknown> => {
  const parsed = inputSchema(row.input).safeParse(input);
  if (!parsed.success) {
    return { ok: false, refused: refusalsFromIssues(parsed.error.issues, row.input, input, root) };
  }
  const refused = row.consistent?.(parsed.data) ?? [];
  if (refused.length > 0) return { ok: false, refused };
  const outcome = row.calculate(parsed.data);
  return outcome.ok && hasMinusZero(outcome.result)
    ? { ...outcome, result: withoutMinusZero(outcome.result) }
    : outcome;
};
