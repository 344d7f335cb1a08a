/** Lists as long as real diaries, with the far ends of the bounds in them: figures or a refusal, never NaN or infinity. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AnyCalculation } from '#core/calculations/calculation.ts';
import type { Field } from '#core/calculations/describe.ts';
import type { Outcome } from '#core/outcome.ts';
import { seriesRows } from '#core/statistics/rows.ts';
import { inputArbitrary } from '#tests/support/descriptor-arbitrary.ts';
import { holdsIn } from '#tests/support/holds.ts';

const value = fc.oneof(
  fc.integer({ min: 0, max: 10 }),
  fc.double({ min: -1e6, max: 1e6, noNaN: true }),
  fc.constantFrom(-1e6, 1e6, 0, 1e-300),
);

/** Wide-spread values without ties, which the exact test and day numbers need. */
const spread = fc.integer({ min: -7_000_000, max: 7_000_000 }).map((seventh) => seventh / 7);

const longest = 60;

/** All lists of one input have the same length, as days do; without that most inputs would only be refused. */
const longInput = (fields: readonly Field[]): fc.Arbitrary<Record<string, unknown>> => {
  const lists = fields.filter((field) => field.kind === 'list');
  const others = inputArbitrary(fields.filter((field) => field.kind !== 'list'));
  return fc
    .tuple(fc.integer({ min: 28, max: longest }), fc.constantFrom(value, spread))
    .chain(([days, kind]) =>
      fc
        .tuple(
          others,
          fc.tuple(
            ...lists.map((list) => {
              const most = Math.min(days, list.maxItems ?? days);
              const item = list.of.nullable ? fc.option(kind, { freq: 20 }) : kind;
              return fc.array(item, { minLength: most, maxLength: most });
            }),
          ),
        )
        .map(([plain, made]) => ({
          ...plain,
          ...Object.fromEntries(lists.map((list, at) => [list.name, made[at]])),
        })),
    );
};

const allFinite = (found: unknown): boolean =>
  typeof found === 'number'
    ? Number.isFinite(found)
    : typeof found !== 'object' || found === null || Object.values(found).every(allFinite);

const withLists: readonly AnyCalculation[] = seriesRows.filter((row) =>
  row.input.some((field: Field) => field.kind === 'list'),
);

describe('series as long as diaries', () => {
  it.each(withLists.map((row) => [row.id, row] as const))(
    '%s gives finite figures or a refusal',
    (_, row) => {
      let answered = 0;
      holdsIn(2_000, longInput(row.input), (input) => {
        const outcome = row.calculate(input) as Outcome<unknown>;
        if (outcome.ok) answered += 1;
        return outcome.ok ? allFinite(outcome.result) : outcome.refused.length > 0;
      });
      expect(answered).toBeGreaterThan(100);
    },
  );
});
