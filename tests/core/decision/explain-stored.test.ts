/** A stored decision in full: nothing it was taken from is left out, and what was not answered is said. */
import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { type DecisionInFull, explainInFull } from '#core/decision/explain-stored.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { baseFacts } from './base-facts.ts';

const facts: Facts = { ...baseFacts, painNextMorning: 7, swelling: null };
const stored = (over: Partial<DecisionInFull> = {}): DecisionInFull => ({
  id: 'd1',
  joint: 'right-knee',
  day: '2026-03-02',
  cause: 'morning',
  engineVersion: '2',
  facts,
  settings: engineDefaults,
  ...decide(facts, engineDefaults),
  ...over,
});

describe('a stored decision in full', () => {
  it('names every fact and every rule that fired, and that it comes out the same', () => {
    const one = stored();
    const lines = explainInFull(one);
    expect(lines[0]).toBe('decision d1: right-knee, 2026-03-02, after a morning, version 2 of the rules');
    expect(lines.filter((line) => line.includes('Threshold: '))).toHaveLength(one.reasons.length);
    expect(one.reasons.length).toBeGreaterThan(0);
    for (const { rule } of one.reasons)
      expect(lines.some((line) => line.startsWith(`  ${rule} `))).toBe(true);
    expect(lines).toContain('  pain next morning: 7');
    expect(lines.filter((line) => line.endsWith(': not answered')).length).toBeGreaterThan(0);
    expect(lines.at(-1)).toBe('Taken again from these facts it comes out the same.');
  });

  it('tells a choice of the clinic’s own beside the default it replaced', () => {
    const [id, value] = Object.entries(engineDefaults)[0]!;
    const lines = explainInFull(stored({ settings: { ...engineDefaults, [id]: value + 1 } }));
    expect(lines).toContain(`  ${id}: ${value + 1} (default ${value})`);
    expect(lines).toContain(`  ${Object.keys(engineDefaults).length - 1} more stand at their defaults`);
  });

  it('says when it would come out otherwise, and when its version is not known', () => {
    expect(explainInFull(stored({ decision: 'progress', largestStep: 'load' })).at(-1)).toMatch(
      /^Taken again from these facts it comes out otherwise: decision /,
    );
    expect(explainInFull(stored({ engineVersion: '99' })).at(-1)).toBe(
      'This release does not know version 99 of the rules.',
    );
  });
});
