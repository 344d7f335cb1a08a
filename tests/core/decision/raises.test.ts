import { describe, expect, it } from 'vitest';
import { bolderAnswers } from '#core/decision/bolder.ts';
import { seeded } from '#simulation/raises/seeded.ts';
import { tryFactRaises, tryHistoryRaises } from '#simulation/raises/try-raises.ts';

describe('raising a symptom never makes any answer bolder', () => {
  it('in 18,000 sets of facts, for fixed baseline values [symptoms 77]', () => {
    const tried = tryFactRaises(seeded(20260131), 18_000);
    console.log(`raises of facts: ${tried.raises}, from progress: ${tried.fromProgress}`);
    expect(tried.violations).toEqual([]);
    expect(tried.fromProgress).toBeGreaterThan(300);
  });

  it('in 2,000 generated histories seen at later days, for fixed recorded prescription versions', () => {
    const tried = tryHistoryRaises(seeded(20260131), 2000);
    console.log(
      `raises in histories: ${tried.raises}, comparisons: ${tried.comparisons}, from progress: ${tried.fromProgress}`,
    );
    expect(tried.violations).toEqual([]);
    expect(tried.fromProgress).toBeGreaterThan(200);
  });

  it('and the trial would notice: a bolder answer of each kind is found', () => {
    const calm = { decision: 'hold', largestStep: null, today: 'bad-day', contact: 'routine' } as const;
    expect(bolderAnswers(calm, { ...calm, decision: 'progress', largestStep: 'repetitions' })).toEqual([
      'decision',
      'largestStep',
    ]);
    expect(bolderAnswers(calm, { ...calm, today: 'as-planned' })).toEqual(['today']);
    expect(bolderAnswers(calm, { ...calm, contact: 'none' })).toEqual(['contact']);
    expect(bolderAnswers(calm, { ...calm, decision: 'pause', today: 'none', contact: 'emergency' })).toEqual(
      [],
    );
  });
});
