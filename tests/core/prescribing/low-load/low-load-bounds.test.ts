import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LowLoadInput, lowLoadInput } from '#core/prescribing/low-load/low-load-input.ts';
import { inputArbitrary } from '#tests/support/descriptor-arbitrary.ts';
import { holds } from '#tests/support/holds.ts';
import { knownTen, proposal, propose, warned } from './low-load-proposal.ts';

describe('the bad-day session', () => {
  it('has fewer sets, the low end of the band and more in reserve at the same load', () => {
    const { dose, badDay } = proposal(knownTen);
    expect(badDay).toEqual({ ...dose, sets: 1, repetitions: { low: 15, high: 15 }, reserve: 3 });
  });

  it('says so when the choices leave it no easier', () => {
    const flat = { ...knownTen, sets: 1, reserve: 3, repetitionsLow: 20, repetitionsHigh: 20 };
    expect(warned(flat)).toContain('bad-day-not-easier');
    expect(warned({ ...flat, sets: 2 })).not.toContain('bad-day-not-easier');
  });

  it('is never harder than the ordinary day, whatever is asked', () => {
    holds(inputArbitrary(lowLoadInput), (generated) => {
      const outcome = propose(generated as unknown as LowLoadInput);
      if (!outcome.ok) return;
      const { dose, badDay } = outcome.result;
      expect(badDay.sets).toBeLessThanOrEqual(dose.sets);
      expect(badDay.reserve).toBeGreaterThanOrEqual(dose.reserve);
      expect(badDay.repetitions.high).toBeLessThanOrEqual(dose.repetitions.high);
      expect(badDay.loadKg).toBe(dose.loadKg);
    });
  });
});

describe('what a dose never does', () => {
  const rack = fc.array(
    fc.integer({ min: 1, max: 80 }).map((quarter) => quarter / 4),
    {
      minLength: 1,
      maxLength: 15,
    },
  );

  it('never lifts the load over the target or the ceiling while rounding down', () => {
    holds(
      rack,
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 1, max: 40 }),
      fc.double({ min: 30, max: 50, noNaN: true }),
      fc.integer({ min: 1, max: 20 }),
      (availableKg, loadKg, repetitions, percent, loadCeilingKg) => {
        const outcome = propose({ test: { loadKg, repetitions }, availableKg, percent, loadCeilingKg });
        if (!outcome.ok) return;
        expect(outcome.result.dose.loadKg).toBeLessThanOrEqual(outcome.result.targetKg + 1e-6);
        expect(outcome.result.dose.loadKg).toBeLessThanOrEqual(loadCeilingKg);
        expect(availableKg).toContain(outcome.result.dose.loadKg);
      },
    );
  });

  it('a stronger test never proposes a lighter load, and a higher percentage never a lighter one', () => {
    holds(
      rack,
      fc.integer({ min: 3, max: 40 }),
      fc.integer({ min: 3, max: 19 }),
      fc.integer({ min: 30, max: 49 }),
      (availableKg, loadKg, repetitions, percent) => {
        const base = propose({ test: { loadKg, repetitions }, availableKg, percent });
        if (!base.ok) return;
        const stronger = proposal({ test: { loadKg, repetitions: repetitions + 1 }, availableKg, percent });
        const higher = proposal({ test: { loadKg, repetitions }, availableKg, percent: percent + 1 });
        expect(stronger.dose.loadKg).toBeGreaterThanOrEqual(base.result.dose.loadKg);
        expect(higher.dose.loadKg).toBeGreaterThanOrEqual(base.result.dose.loadKg);
      },
    );
  });
});
