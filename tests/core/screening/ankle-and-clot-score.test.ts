/** Ankle-brachial index and the clot score against worked values. */
import { describe, expect, it } from 'vitest';
import { noteCodes, refusalsOf, resultOf } from '../prescribing/occlusion/row-answers.ts';

const index = (dorsalisPedisMmhg: number, posteriorTibialMmhg: number, ...brachialMmhg: number[]) =>
  resultOf('ankle-brachial-index', { dorsalisPedisMmhg, posteriorTibialMmhg, brachialMmhg });

describe('ankle-brachial index (conventional definition; bands restated from 2011 and 2024 guidelines)', () => {
  it.each([
    [21, [110, 118, 132, 128], 0.89, 'abnormal'],
    [22, [84, 96, 120, 124], 0.77, 'abnormal'],
    [23, [122, 126, 124, 120], 1.02, 'normal'],
    [24, [180, 176, 120, 118], 1.5, 'non-compressible'],
    [25, [108, 104, 120, 116], 0.9, 'abnormal'],
    [26, [113, 100, 125, 118], 0.9, 'abnormal'],
    [27, [119, 112, 120, 110], 0.99, 'borderline'],
    [28, [141, 138, 100, 98], 1.41, 'non-compressible'],
  ] as const)(
    'is banded from two decimals [screening %i]',
    (_, [dorsal, tibial, right, left], rounded, band) => {
      const result = index(dorsal, tibial, right, left);
      expect(Math.round((result.index as number) * 100) / 100).toBe(rounded);
      expect(result.band).toBe(band);
    },
  );

  it('is given unrounded', () => {
    expect(index(110, 118, 132, 128).index).toBeCloseTo(0.893939, 6);
  });

  it('changes band under, at and over each bound', () => {
    const band = (ankle: number) => index(ankle, 0, 100).band;
    expect([89, 90, 91, 98, 99, 100, 139, 140, 141].map(band)).toEqual([
      'abnormal',
      'abnormal',
      'borderline',
      'borderline',
      'borderline',
      'normal',
      'normal',
      'normal',
      'non-compressible',
    ]);
    // Half up: 181 over 200 is 0.905, which rounds to 0.91.
    expect(index(181, 0, 200).band).toBe('borderline');
  });

  it('says that a normal index can be false, and that one arm is fewer than two', () => {
    const input = { dorsalisPedisMmhg: 122, posteriorTibialMmhg: 126, brachialMmhg: [124] };
    expect(noteCodes('ankle-brachial-index', input)).toEqual(['normal-may-be-false', 'one-arm']);
    expect(refusalsOf('ankle-brachial-index', { ...input, brachialMmhg: [] })).not.toEqual([]);
  });
});

const none = {
  activeCancer: false,
  paralysisOrPlaster: false,
  bedriddenOrSurgery: false,
  deepVeinTenderness: false,
  wholeLegSwollen: false,
  calfLarger: false,
  pittingOedema: false,
  collateralVeins: false,
  previousClot: false,
  otherDiagnosisAsLikely: false,
};
type Items = Partial<typeof none>;
const score = (form: string, items: Items = {}) =>
  resultOf('wells-dvt', { form, items: { ...none, ...items } });
const allPositive: Items = {
  ...Object.fromEntries(Object.keys(none).map((id) => [id, true])),
  otherDiagnosisAsLikely: false,
};

describe('clot score, 2003 two-level form (NEJM 349:1227, table seen)', () => {
  it('nothing found: 0, unlikely [screening 29]', () => {
    expect(score('2003')).toEqual({ score: 0, band: 'unlikely' });
  });
  it('active cancer and a larger calf: 2, likely [screening 30]', () => {
    expect(score('2003', { activeCancer: true, calfLarger: true })).toEqual({ score: 2, band: 'likely' });
  });
  it('whole leg, calf, and another diagnosis as likely: 0, unlikely [screening 31]', () => {
    expect(score('2003', { wholeLegSwollen: true, calfLarger: true, otherDiagnosisAsLikely: true })).toEqual({
      score: 0,
      band: 'unlikely',
    });
  });
  it('all nine and no other diagnosis: 9, likely, the most there is [screening 32]', () => {
    expect(score('2003', allPositive)).toEqual({ score: 9, band: 'likely' });
  });
  it('another diagnosis alone: −2, unlikely, the least there is [screening 33]', () => {
    expect(score('2003', { otherDiagnosisAsLikely: true })).toEqual({ score: -2, band: 'unlikely' });
  });
  it('one point is unlikely, two are likely', () => {
    expect(score('2003', { pittingOedema: true }).band).toBe('unlikely');
    expect(score('2003', { pittingOedema: true, previousClot: true }).band).toBe('likely');
  });
});

describe('clot score, 1997 three-level form (Lancet 350:1795, restated)', () => {
  it('in bed, tender and pitting: 3, high [screening 34]', () => {
    expect(
      score('1997', { bedriddenOrSurgery: true, deepVeinTenderness: true, pittingOedema: true }),
    ).toEqual({
      score: 3,
      band: 'high',
    });
  });
  it('surgery ten weeks ago counts in the 2003 window of 12 weeks and not in the 1997 one of 4 [screening 35]', () => {
    expect(score('1997', { bedriddenOrSurgery: false })).toEqual({ score: 0, band: 'low' });
    expect(score('2003', { bedriddenOrSurgery: true })).toEqual({ score: 1, band: 'unlikely' });
  });
  it('0, 1, 2 and 3 points are low, moderate, moderate and high; eight is the most', () => {
    const bands = [
      score('1997'),
      score('1997', { calfLarger: true }),
      score('1997', { calfLarger: true, pittingOedema: true }),
      score('1997', { calfLarger: true, pittingOedema: true, activeCancer: true }),
    ].map(({ band }) => band);
    expect(bands).toEqual(['low', 'moderate', 'moderate', 'high']);
    expect(score('1997', allPositive)).toEqual({ score: 8, band: 'high' });
  });
  it('does not hold an earlier clot, and says that it was not counted', () => {
    const input = { form: '1997', items: { ...none, previousClot: true } };
    expect(resultOf('wells-dvt', input).score).toBe(0);
    expect(noteCodes('wells-dvt', input)).toContain('not-in-form');
  });
});

describe('clot score, both forms', () => {
  it.each(['1997', '2003'])('%s says that a low score clears nothing', (form) => {
    expect(noteCodes('wells-dvt', { form, items: none })).toContain('clears-nothing');
  });
  it('refuses an absent item and one it does not know', () => {
    for (const id of Object.keys(none).filter((name) => name !== 'previousClot')) {
      const { [id as keyof Items]: _left, ...rest } = none;
      expect(refusalsOf('wells-dvt', { form: '1997', items: rest })).toEqual([`input.items.${id} missing`]);
    }
    const { previousClot: _left, ...eight } = none;
    expect(refusalsOf('wells-dvt', { form: '2003', items: eight })).toEqual([
      'input.items.previousClot missing',
    ]);
    expect(refusalsOf('wells-dvt', { form: '1997', items: eight })).toEqual([]);
    expect(refusalsOf('wells-dvt', { form: '2003', items: { ...none, other: true } })).toEqual([
      'input.items.other unknown-field',
    ]);
  });
});
