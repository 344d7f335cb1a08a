/** One calculation with untrusted input: the descriptor's bounds, then rules across fields, then the sum. */
import type { AnyCalculation } from '#core/calculation.ts';
import type { Outcome } from '#core/outcome.ts';
import { inputSchema } from './from-descriptor.ts';
import { refusalsFromIssues } from './refusals.ts';

export const evaluate = (row: AnyCalculation, input: unknown, root = 'input'): Outcome<unknown> => {
  const parsed = inputSchema(row.input).safeParse(input);
  if (!parsed.success) {
    return { ok: false, refused: refusalsFromIssues(parsed.error.issues, row.input, input, root) };
  }
  const refused = row.consistent?.(parsed.data) ?? [];
  return refused.length > 0 ? { ok: false, refused } : row.calculate(parsed.data);
};
