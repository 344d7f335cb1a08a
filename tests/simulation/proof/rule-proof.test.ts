/** What the page of each rule shows of its last run stays true: it is of this code, and comes out the same again. */
import { describe, expect, it } from 'vitest';
import { digestOfRule, testOfRule } from '#commands/team/prove/rule-digest.ts';
import { rulesOf } from '#core/decision/rules/table.ts';
import { newestVersion } from '#core/decision/settings.ts';
import { proofRun, ruleProofs } from '#simulation/kept/kept-proof.ts';
import { ruleCounts } from '#simulation/proof/rule-counts.ts';
import { looksAtUnchanged } from '#simulation/proof/unchanged-diaries.ts';
import { textOf } from '#tests/architecture/repository.ts';

const again = 'npm run prove-rules writes it anew';

describe('what is kept of each rule', () => {
  it('is one row a rule, in the order of the table, of the newest version', () => {
    expect(
      ruleProofs.map(({ rule }) => rule),
      again,
    ).toEqual(rulesOf(newestVersion).map(({ id }) => id));
    expect(proofRun.version, again).toBe(newestVersion);
  });

  it('is of the rule, the tests and the second statement as they stand now', () => {
    const changed = ruleProofs.filter(({ rule, digest }) => digestOfRule(rule) !== digest);
    expect(
      changed.map(({ rule }) => rule),
      again,
    ).toEqual([]);
  });

  it('names tests that exist and are of this rule, and counts at least one', () => {
    for (const { rule, file, tests } of ruleProofs) {
      expect(file).toBe(testOfRule(rule));
      expect(textOf(file)).toContain(`describeRule('${rule}', {`);
      expect(tests).toBeGreaterThan(0);
    }
  });

  it('comes out the same again, to the last case', () => {
    const { rows, disagreements, looks } = ruleCounts(proofRun);
    expect({ disagreements, looks }, again).toEqual({
      disagreements: proofRun.disagreements,
      looks: proofRun.looks,
    });
    expect(rows, again).toEqual(
      ruleProofs.map(({ rule, fired, firedUnchanged, decidedUnchanged }) => {
        return { rule, fired, firedUnchanged, decidedUnchanged };
      }),
    );
    expect(disagreements).toBe(0);
  });

  it('has fired in some generated case, every rule', () => {
    expect(ruleProofs.filter(({ fired }) => fired === 0)).toEqual([]);
  });
});

describe('diaries in which nothing changes', () => {
  const looks = looksAtUnchanged(7, 3);

  it('are looked at on the morning after each of 18 sessions', () => {
    expect(looks).toHaveLength(54);
    expect(looksAtUnchanged(7, 3)).toEqual(looks);
    expect(looksAtUnchanged(8, 3)).not.toEqual(looks);
  });

  it('make no rule speak of what is not in them', () => {
    const fired = new Set(looksAtUnchanged(100, 30).flatMap((look) => look.fired.map(({ rule }) => rule)));
    for (const rule of [
      'R1',
      'M1',
      'W2',
      'W3',
      'S1',
      'T1',
      'A1',
      'A2',
      'C1',
      'C2',
      'D1',
      'D2',
      'D4',
      'B0',
      'B1',
    ])
      expect([rule, fired.has(rule)]).toEqual([rule, false]);
  });

  it('are decided by what caps as the decision does', () => {
    for (const { decision, fired } of looks)
      expect(decision === 'progress' || fired.some(({ caps }) => caps === decision)).toBe(true);
  });
});
