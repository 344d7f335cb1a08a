import { describe, expect, it } from 'vitest';
import type { Answers } from '#core/decision/answers.ts';
import { decide } from '#core/decision/decide.ts';
import { decidedAgain, type StoredDecision } from '#core/decision/replay.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { randomFacts } from '#simulation/raises/random-facts.ts';
import { seeded } from '#simulation/raises/seeded.ts';
import { facts } from './base-facts.ts';

type Stored = StoredDecision & { readonly answers: Answers };

const stored = (changed: Parameters<typeof facts>[0] = {}): Stored => ({
  id: 'one',
  facts: facts(changed),
  settings: engineDefaults,
  engineVersion: '2',
  answers: decide(facts(changed)),
});

describe('stored decisions decided again', () => {
  it('come out as they were stored, also after a round through text', () => {
    const random = seeded(31);
    const all = Array.from({ length: 2000 }, (): Stored => {
      const given = randomFacts(random);
      return { ...stored(), facts: given, answers: decide(given) };
    });
    const again = (JSON.parse(JSON.stringify(all)) as Stored[]).map((one) => decidedAgain(one).outcome);
    expect(new Set(again)).toEqual(new Set(['same']));
  });

  it('one that the rules do not give is different, with what they give and the rules that differ', () => {
    const wrong = { ...stored({ painDuring: 6 }), answers: decide(facts({})) };
    expect(decidedAgain(wrong)).toMatchObject({
      outcome: 'different',
      after: { decision: 'ease-back' },
      rules: ['P2', 'P4'],
    });
  });

  it('the same four answers for other rules are different too', () => {
    const one = stored({ painDuring: 6 });
    const { reasons } = one.answers;
    const fewer = {
      ...one,
      answers: { ...one.answers, reasons: reasons.filter(({ rule }) => rule !== 'P4') },
    };
    expect(decidedAgain(fewer)).toMatchObject({ outcome: 'different', rules: ['P4'] });
  });

  it('one of another version of the rules, or without a fact they read, is told with the reason', () => {
    expect(decidedAgain({ ...stored(), engineVersion: '0' })).toEqual({
      outcome: 'not-replayable',
      reason: 'this release does not know version 0 of the rules',
    });
    const { painCeiling: _ceiling, gapDays: _gap, ...fewer } = facts({});
    expect(decidedAgain({ ...stored(), facts: fewer as Stored['facts'] })).toEqual({
      outcome: 'not-replayable',
      reason: 'the stored facts lack painCeiling, gapDays',
    });
  });
});
