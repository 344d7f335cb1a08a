import { describe, expect, it } from 'vitest';
import { strengthRows } from '#core/assessment/strength/rows.ts';
import { strengthSources } from '#core/sources/strength.ts';

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
});
