/** Every calculation, over everything its own bounds let in: an answer in finite numbers, or a refusal. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '#api/inputs/evaluate.ts';
import { inputSchema } from '#api/inputs/from-descriptor.ts';
import type { AnyCalculation } from '#core/calculations/calculation.ts';
import { registry } from '#core/calculations/registry.ts';
import { refusalCodes } from '#core/outcome.ts';
import { inputArbitrary } from '#tests/support/descriptor-arbitrary.ts';
import { broken } from '#tests/support/desk-rows.ts';
import { holdsIn } from '#tests/support/holds.ts';

const cases = 10_000;

/** Path of the first number that is no finite figure, or is minus zero; null when there is none. */
const unfit = (value: unknown, at = 'result'): string | null => {
  if (typeof value === 'number')
    return Number.isFinite(value) && !Object.is(value, -0) ? null : `${at} = ${value}`;
  if (typeof value !== 'object' || value === null) return null;
  for (const key in value) {
    const found = unfit((value as Record<string, unknown>)[key], `${at}.${key}`);
    if (found !== null) return found;
  }
  return null;
};

/** What is wrong with the answer to an input, in words; null when nothing is. */
const wrongWith = (row: AnyCalculation, input: unknown): string | null => {
  const parsed = inputSchema(row.input).safeParse(input);
  if (!parsed.success) return `the generator made what the bounds refuse: ${parsed.error.message}`;
  const outcome = evaluate(row, input);
  if (outcome.ok) return unfit(outcome.result);
  if (outcome.refused.length === 0) return 'refused without a reason';
  const poor = outcome.refused.find(
    ({ field, code, reason }) =>
      !/^input\b/.test(field) || !refusalCodes.includes(code) || reason.trim().length < 10,
  );
  return poor ? `a refusal that helps nobody: ${JSON.stringify(poor)}` : null;
};

describe('no input that the bounds let in gives NaN, infinity, minus zero or an exception', () => {
  it.each(registry.map((row) => [row.id, row] as const))('%s', (_, row) => {
    let answered = 0;
    holdsIn(cases, inputArbitrary(row.input), (input) => {
      const wrong = wrongWith(row, input);
      if (wrong !== null) throw new Error(wrong);
      answered += 1;
    });
    expect(answered).toBe(cases);
  });

  it('minus zero is given as zero, however deep it stands', () => {
    expect(unfit({ inner: [{ value: -0 }] })).not.toBeNull();
    expect(evaluate(broken, { fault: 'minus-zero' })).toMatchObject({ result: { inner: [{ value: 0 }] } });
    expect(wrongWith(broken, { fault: 'minus-zero' })).toBeNull();
  });

  it.each(['throws', 'not-a-number', 'infinite'])('would find a calculation that gives: %s', (fault) => {
    const find = () => {
      const wrong = wrongWith(broken, { fault });
      if (wrong !== null) throw new Error(wrong);
    };
    expect(find).toThrow();
  });
});
