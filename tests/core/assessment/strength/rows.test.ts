import { describe, expect, it } from 'vitest';
import { strengthRows } from '#core/assessment/strength/rows.ts';
import { strengthSources } from '#core/sources/strength.ts';
import { inputArbitrary } from '#tests/support/descriptor-arbitrary.ts';
import { holds } from '#tests/support/holds.ts';

/** Every number anywhere in a value. */
const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(numbersIn);
};

describe('every strength row', () => {
  it.each(strengthRows.map((row) => [row.id, row] as const))('%s answers its own example', (_, row) => {
    expect(row.consistent?.(row.example) ?? []).toEqual([]);
    expect(row.calculate(row.example)).toMatchObject({ ok: true });
  });

  it('has an id of its own and result fields that its example returns', () => {
    expect(new Set(strengthRows.map(({ id }) => id)).size).toBe(strengthRows.length);
    for (const row of strengthRows) {
      const outcome = row.calculate(row.example);
      const returned = outcome.ok ? Object.keys(outcome.result as object) : [];
      expect([row.id, ...returned.sort()]).toEqual([
        row.id,
        ...row.result.map(({ name }: { name: string }) => name).sort(),
      ]);
    }
  });

  it('cites sources that exist, and every source is cited', () => {
    const cited = strengthRows.flatMap(({ citations }) => citations.map(({ source }) => source));
    expect([...new Set(cited)].sort()).toEqual(Object.keys(strengthSources).sort());
    expect(strengthRows.filter(({ citations }) => citations.length === 0)).toEqual([]);
  });

  it.each(strengthRows.map((row) => [row.id, row] as const))(
    '%s answers with finite numbers or a reason for every input its bounds let in',
    (_, row) => {
      holds(inputArbitrary(row.input), (input) => {
        if ((row.consistent?.(input) ?? []).length > 0) return;
        const outcome = row.calculate(input);
        if (!outcome.ok) {
          expect(outcome.refused.length).toBeGreaterThan(0);
          for (const refusal of outcome.refused) {
            expect(refusal.field).toMatch(/^input\./);
            expect(refusal.reason).not.toMatch(/NaN|undefined|Infinity/);
          }
          return;
        }
        const poor = numbersIn(outcome).filter((n) => !Number.isFinite(n) || Object.is(n, -0));
        if (poor.length > 0) throw new Error(`${JSON.stringify(input)} gave ${poor}`);
        expect(JSON.stringify(outcome)).not.toMatch(/NaN|undefined|Infinity/);
      });
    },
  );
});
