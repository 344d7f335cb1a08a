import { describe, expect, it } from 'vitest';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { LowLoadRequest } from '#core/prescribing/dose-request.ts';
import { notOwnedInWords } from '#core/prescribing/low-load/owned-load.ts';
import type { PrescribingContext } from '#core/prescribing/prescribing-context.ts';
import { proposePrescription } from '#core/prescribing/propose.ts';
import { context, limit } from '../choice/known-patient.ts';

const request = { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right' } as const;

const ask = (over: Partial<LowLoadRequest>, on: Partial<PrescribingContext> = {}) =>
  proposePrescription({ ...context, ...on }, { ...request, ...over });

const doseOf = (over: Partial<LowLoadRequest>, on: Partial<PrescribingContext> = {}): LowLoadDose => {
  const outcome = ask(over, on);
  if (!outcome.ok) throw new Error(outcome.refused.map(({ reason }) => reason).join(' '));
  return outcome.result.dose as LowLoadDose;
};

const refusedAs = (over: Partial<LowLoadRequest>, on: Partial<PrescribingContext> = {}) => {
  const outcome = ask(over, on);
  return outcome.ok ? outcome.result.dose : outcome.refused[0];
};

/** A maximum of 10 kg, so that kilograms read as tenths of it; the band ends at 50 %. */
const ten = { knownOneRepMaxKg: 10 };

describe('a load typed by the clinician', () => {
  it.each([1, 2, 3, 4, 5])('is proposed as it was typed: %d kg', (loadKg) => {
    expect(doseOf({ ...ten, loadKg }).loadKg).toBe(loadKg);
  });

  it.each([
    [4.5, '4.5 kg is not among the loads at home. The nearest owned: 4 kg and 5 kg.'],
    [0.5, '0.5 kg is not among the loads at home. The nearest owned: 1 kg.'],
    [7, '7 kg is not among the loads at home. The nearest owned: 6 kg.'],
  ])('is refused with the nearest owned where it is not owned, and never changed: %d kg', (loadKg, said) => {
    const refused = refusedAs({ ...ten, loadKg });
    expect(refused).toMatchObject({ field: 'input.loadKg', code: 'not-listed' });
    expect((refused as { reason: string }).reason).toContain(said);
  });

  it('is compared to the milligram', () => {
    expect(notOwnedInWords(0.1 + 0.2, [0.3])).toBeNull();
    expect(notOwnedInWords(0.301, [0.3])).not.toBeNull();
    expect(notOwnedInWords(1, [])).toMatch(/No load is recorded/);
  });

  it('under the band is proposed and said', () => {
    const outcome = ask({ ...ten, loadKg: 2 });
    expect(outcome.ok && outcome.result.notes.map(({ code }) => code)).toContain('under-floor');
    const at = ask({ ...ten, loadKg: 3 });
    expect(at.ok && at.result.notes.map(({ code }) => code)).not.toContain('under-floor');
  });

  it('over the band is refused with the heaviest available within it', () => {
    const refused = refusedAs({ ...ten, loadKg: 6 });
    expect(refused).toMatchObject({ field: 'input.loadKg', code: 'too-high' });
    expect(refused).toMatchObject({
      reason: expect.stringMatching(/60 % of the maximum.* ends at 50 %.*heaviest available within it: 5 kg/),
    });
  });

  const inForce = (loadKg: number): LowLoadDose => ({ ...doseOf({ ...ten, loadKg: 5 }), loadKg });

  it.each([
    [5, 6, false],
    [6, 6, true],
    [6.5, 6, true],
  ])(
    'over the band is proposed, and said, where no more than is in force: %d kg in force, %d kg typed',
    (forceKg, loadKg, isProposed) => {
      const outcome = ask({ ...ten, loadKg }, { inForce: [inForce(forceKg)] });
      expect(outcome.ok).toBe(isProposed);
      if (outcome.ok) expect(outcome.result.notes.map(({ code }) => code)).toContain('over-top');
    },
  );

  it('does not lean on what is in force on the other side', () => {
    const left = { ...inForce(6), side: 'left' } as const;
    expect(refusedAs({ ...ten, loadKg: 6 }, { inForce: [left] })).toMatchObject({ code: 'too-high' });
  });

  it('over a limit is refused although it is owned and in force', () => {
    const limits = [limit({ limitKg: 3 })];
    const refused = refusedAs({ ...ten, loadKg: 4 }, { limits, inForce: [inForce(4)] });
    expect(refused).toMatchObject({ code: 'too-high' });
    expect(refused).toMatchObject({ reason: expect.stringMatching(/4 kg is over a limit.*up to 3 kg/) });
    expect(doseOf({ ...ten, loadKg: 3 }, { limits }).loadKg).toBe(3);
  });

  it('beside a share of the maximum is refused, since the two may disagree', () => {
    expect(refusedAs({ ...ten, loadKg: 4, percent: 40 })).toMatchObject({ code: 'inconsistent' });
  });

  describe('where no maximum is known', () => {
    // 40 repetitions: no equation holds so far out, and the tested load is the most that is proposed.
    const measurements = context.measurements.map((row) =>
      row.kind === 'repetitions-to-failure' ? { ...row, loadKg: 4, repetitions: 40 } : row,
    );

    it.each([
      [3, true],
      [4, true],
      [5, false],
    ])('is proposed up to the load tested, 4 kg: %d kg', (loadKg, isProposed) => {
      expect(ask({ loadKg }, { measurements }).ok).toBe(isProposed);
    });

    it('names the load tested where it is over it', () => {
      expect(refusedAs({ loadKg: 5 }, { measurements })).toMatchObject({
        reason: expect.stringMatching(/4 kg tested.*heaviest available within it: 4 kg/),
      });
    });
  });
});
