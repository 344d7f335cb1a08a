/** Every combination of one and two answers, by method, limb and side. */
import { describe, expect, it } from 'vitest';
import { eligibilities, methods } from '#core/prescribing/methods.ts';
import { screeningItems } from '#core/screening/items.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import type { MethodOutcome, ScreeningItemAnswer } from '#core/screening/screening.ts';
import { outcomesInput, screeningWith } from './answers.ts';

const answers = ['yes', 'no', 'not-known'] as const;
const outcomesFor = (changed: readonly ScreeningItemAnswer[]): readonly MethodOutcome[] =>
  methodOutcomes(outcomesInput({ screening: screeningWith(changed) }));
const caution = (outcome: MethodOutcome): number => eligibilities.indexOf(outcome.eligibility);

/** Each item answered each way: alone, with each detail alone, and for one named limb or joint. */
const variants: readonly ScreeningItemAnswer[] = screeningItems.flatMap((item) =>
  answers.flatMap((answer): ScreeningItemAnswer[] => [
    { item: item.id, answer },
    ...(item.asks.details ?? []).map((detail) => ({ item: item.id, answer, details: [detail] })),
    ...(item.asks.limbs
      ? [{ item: item.id, answer, limbs: [{ limb: 'leg' as const, side: 'left' as const }] }]
      : []),
    ...(item.asks.joints ? [{ item: item.id, answer, joints: ['right-knee'] }] : []),
  ]),
);
const alone = new Map(variants.map((variant) => [variant, outcomesFor([variant])]));

const wrongWith = (outcome: MethodOutcome): string | null => {
  if (outcome.eligibility !== 'open' && outcome.reasons.length === 0) return 'not open without a reason';
  if (outcome.eligibility === 'open' && outcome.reasons.length > 0) return 'open with a reason against it';
  const poor = outcome.reasons.find(
    ({ code, from, text, support }) => !code || !from || !support || text.trim().length < 15,
  );
  if (poor) return `poor reason ${JSON.stringify(poor)}`;
  const told = outcome.reasons.some(({ eligibility }) => eligibility === outcome.eligibility);
  return outcome.eligibility === 'open' || told ? null : 'no reason has the opening of the outcome';
};

describe('one answer', () => {
  it('always gives twelve outcomes, each not open one with a reason in words', () => {
    for (const [variant, outcomes] of alone) {
      expect(outcomes).toHaveLength(12);
      for (const outcome of outcomes) expect([variant, wrongWith(outcome)]).toEqual([variant, null]);
    }
  });

  it('"not known" is never bolder than "yes", and "yes" never bolder than "no"', () => {
    for (const [variant, outcomes] of alone) {
      if (variant.answer !== 'yes') continue;
      const notKnown = outcomesFor([{ ...variant, answer: 'not-known' }]);
      const no = outcomesFor([{ ...variant, answer: 'no' }]);
      outcomes.forEach((outcome, at) => {
        expect(caution(notKnown[at]!)).toBeGreaterThanOrEqual(caution(outcome));
        expect(caution(outcome)).toBeGreaterThanOrEqual(caution(no[at]!));
      });
    }
  });

  it('without limb, joint or detail is never bolder than with one', () => {
    for (const [variant, outcomes] of alone) {
      const { limbs: _limbs, joints: _joints, details: _details, ...bare } = variant;
      const unsaid = outcomesFor([bare]);
      outcomes.forEach((outcome, at) => {
        expect(caution(unsaid[at]!)).toBeGreaterThanOrEqual(caution(outcome));
      });
    }
  });

  it('"not known" has the effect of every detail, whichever is named beside it', () => {
    for (const [variant, outcomes] of alone) {
      if (variant.answer !== 'not-known' || !variant.details) continue;
      const { details: _details, ...bare } = variant;
      expect(outcomes).toEqual(outcomesFor([bare]));
    }
  });

  it('of "no" changes nothing', () => {
    for (const [variant, outcomes] of alone) {
      if (variant.answer === 'no')
        expect(outcomes.filter(({ eligibility }) => eligibility !== 'open')).toEqual([]);
    }
  });

  it('left out is never bolder than "not known" or "yes"', () => {
    for (const item of screeningItems) {
      const screening = screeningWith();
      const absent = methodOutcomes(
        outcomesInput({
          // An age at which every item is asked.
          ageYears: 40,
          screening: { ...screening, answers: screening.answers.filter((one) => one.item !== item.id) },
        }),
      );
      for (const answer of ['yes', 'not-known'] as const) {
        outcomesFor([{ item: item.id, answer }]).forEach((outcome, at) => {
          expect([item.id, caution(absent[at]!) >= caution(outcome)]).toEqual([item.id, true]);
        });
      }
    }
  });
});

describe('two answers', () => {
  it('are never bolder than either alone, keep every reason of both, and do not depend on their order', () => {
    let checked = 0;
    let problem: string | null = null;
    for (const [first, firstOutcomes] of alone) {
      for (const [second, secondOutcomes] of alone) {
        if (first.item >= second.item) continue;
        const both = outcomesFor([first, second]);
        for (let at = 0; at < both.length; at += 1) {
          const outcome = both[at]!;
          const [one, two] = [firstOutcomes[at]!, secondOutcomes[at]!];
          const expected = Math.max(caution(one), caution(two));
          const reasons = one.reasons.length + two.reasons.length;
          const wrong =
            wrongWith(outcome) ??
            (caution(outcome) === expected ? null : 'not the more cautious of the two') ??
            (outcome.reasons.length === reasons ? null : 'a reason was lost');
          if (wrong) problem ??= `${wrong}: ${JSON.stringify([first, second, outcome.method])}`;
          checked += 1;
        }
      }
    }
    expect(problem).toBeNull();
    const pairs = (screeningItems.length * (screeningItems.length - 1)) / 2;
    expect(checked).toBeGreaterThanOrEqual(pairs * answers.length ** 2 * methods.length * 4);
  }, 120_000);

  it('in the other order give the same openings', () => {
    const sheet = screeningWith([
      { item: 'diabetes', answer: 'yes', details: ['numbness'], limbs: [{ limb: 'leg', side: 'left' }] },
      { item: 'past-clot', answer: 'not-known' },
    ]);
    const turned = { ...sheet, answers: [...sheet.answers].reverse() };
    const eligibilitiesIn = (screening: typeof sheet) =>
      methodOutcomes(outcomesInput({ screening })).map(({ eligibility, reasons }) => [
        eligibility,
        reasons.map(({ code }) => code).sort(),
      ]);
    expect(eligibilitiesIn(turned)).toEqual(eligibilitiesIn(sheet));
  });
});
