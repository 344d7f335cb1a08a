import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isBaselineDueForReview, proposeBaseline } from '#core/decision/baseline/propose-baseline.ts';
import { decide } from '#core/decision/decide.ts';
import { explainToClinician, explainToPatient } from '#core/decision/explain.ts';
import { factFields } from '#core/decision/facts/fact-fields.ts';
import type { Facts } from '#core/decision/facts/facts.ts';
import { overridesByRule } from '#core/decision/override.ts';
import { rulesOf } from '#core/decision/rules/table.ts';
import { addDays } from '#core/time/day.ts';
import { inputArbitrary } from '#tests/support/descriptor-arbitrary.ts';
import { facts } from './base-facts.ts';
import { baseline, firstMonday, judgedMorning, knee, morning, noonOf, record } from './small-record.ts';

describe('a decision in words', () => {
  it('the patient hears the reasons that made the decision and not the milder ones', () => {
    const words = explainToPatient(decide(facts({ painDuring: 6, repetitionsDonePercent: 90 })));
    expect(words).toEqual({ decision: 'ease-back', today: 'bad-day', because: ['P2'] });
  });

  it('the patient hears at most three reasons, each once, whatever the facts', () => {
    const rules = rulesOf(2).map(({ id }) => id);
    fc.assert(
      fc.property(inputArbitrary(factFields), (drawn) => {
        const { because } = explainToPatient(decide(drawn as unknown as Facts));
        expect(because.length).toBeLessThanOrEqual(3);
        expect(new Set(because).size).toBe(because.length);
        expect(rules).toEqual(expect.arrayContaining([...because]));
      }),
      { seed: 20260131, numRuns: 500 },
    );
  });

  it('the clinician reads what was found, the threshold, the source and how it was seen', () => {
    const [reason] = decide(facts({ painNextMorning: 4 })).reasons;
    const item = explainToClinician(reason!);
    expect(item).toContain('pain next morning 4');
    expect(item).toContain('3 over the top of usual pain');
    expect(item).toContain('Silbernagel');
    expect(item).toContain('from memory, not seen');
    expect(item).toContain('decision no more than ease-back');
  });

  it('a rule that rests on a choice says so, also where a source stands near it', () => {
    const told = (changed: Parameters<typeof facts>[0]) =>
      explainToClinician(decide(facts(changed)).reasons[0]!);
    expect(told({ painDuring: 8 })).toContain('clinic setting; related source');
    expect(told({ gapDays: 14 })).toContain('Support: clinic setting.');
  });
});

describe('a clinician’s own decision', () => {
  it('is counted for each rule it overruled', () => {
    expect([...overridesByRule([[{ rule: 'P2' }, { rule: 'P4' }], [{ rule: 'P2' }]])]).toEqual([
      ['P2', 2],
      ['P4', 1],
    ]);
  });
});

describe('usual values proposed for a clinician to set', () => {
  const pains = [2, 3, 2, 4, 2, 3, 2, 2, 3, 5, 2, 2, 3, 2];
  const diary = (count: number, changed: { flare?: boolean | null } = {}) =>
    record({
      mornings: pains
        .slice(0, count)
        .map((pain, place) => morning(addDays(firstMonday, place), { pain, ...changed })),
    });
  const on = (of: ReturnType<typeof record>) => proposeBaseline(of, knee, addDays(firstMonday, 13));

  it('ten of fourteen mornings outside a flare are needed', () => {
    expect(on(diary(9))).toEqual({ ready: false, mornings: 9, needed: 10 });
    expect(on(diary(10)).ready).toBe(true);
    expect(on(diary(14, { flare: true }))).toEqual({ ready: false, mornings: 0, needed: 10 });
    expect(on(diary(14, { flare: null })).ready).toBe(false);
  });

  it('proposes the middle morning, the band as published, and shows how far it may be widened', () => {
    const found = on(diary(14));
    expect(found).toMatchObject({
      ready: true,
      proposal: { usualPain: 2, usualPainTop: 2, widestUsualPainTop: 4, usualStiffnessMinutes: 10 },
    });
  });

  it('the baseline is due for review when 14 days lie 1.5 under usual pain, and not before', () => {
    const under = (usualPain: number) =>
      isBaselineDueForReview(record({ baselines: [baseline({ usualPain })] }), knee, noonOf(judgedMorning));
    expect([under(2), under(2.49), under(2.5), under(3)]).toEqual([false, false, true, true]);
    const dueForReview = record({ baselines: [baseline({ usualPain: 4, dueForReview: true })] });
    expect(isBaselineDueForReview(dueForReview, knee, noonOf(judgedMorning))).toBe(false);
  });
});
