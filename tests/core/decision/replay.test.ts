import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { brokenReplays, differencesUnder, type StoredDecision } from '#core/decision/replay.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { randomFacts } from '#simulation/raises/random-facts.ts';
import { seeded } from '#simulation/raises/seeded.ts';
import { facts } from './base-facts.ts';

const stored = (id: string, changed: Parameters<typeof facts>[0] = {}): StoredDecision => ({
  id,
  facts: facts(changed),
  settings: engineDefaults,
  engineVersion: '2',
  answers: decide(facts(changed)),
});

describe('stored decisions decided again', () => {
  it('come out as they were stored, also after a round through text', () => {
    const random = seeded(31);
    const all = Array.from({ length: 2000 }, (_, place): StoredDecision => {
      const given = randomFacts(random);
      return { ...stored(String(place)), facts: given, answers: decide(given) };
    });
    expect(brokenReplays(JSON.parse(JSON.stringify(all)) as StoredDecision[])).toEqual([]);
  });

  it('a stored answer that the rules do not give is found; another version of the rules is not compared', () => {
    const wrong = { ...stored('a', { painDuring: 6 }), answers: decide(facts({})) };
    expect(brokenReplays([wrong]).map((one) => [one.id, one.after.decision])).toEqual([['a', 'ease-back']]);
    expect(brokenReplays([{ ...wrong, engineVersion: '0' }])).toEqual([]);
  });

  it('a changed choice names whose decisions would differ and how', () => {
    const all = [stored('day 30', { baselineAgeDays: 30 }), stored('day 20', { baselineAgeDays: 20 })];
    const found = differencesUnder(all, { ...engineDefaults, 'baseline-expiry': 28 });
    expect(found.map((one) => [one.id, one.before.decision, one.after.decision])).toEqual([
      ['day 30', 'progress', 'hold'],
    ]);
  });
});
