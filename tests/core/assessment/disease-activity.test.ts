import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cdaiRow } from '#core/assessment/disease-activity/cdai.ts';
import { type Das28Input, das28, das28Band } from '#core/assessment/disease-activity/das28.ts';
import { rapid3Row } from '#core/assessment/disease-activity/rapid3.ts';
import { rheumatoidFlareRow } from '#core/assessment/disease-activity/rheumatoid-flare.ts';
import { sdaiRow } from '#core/assessment/disease-activity/sdai.ts';
import { codesOf, resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { near } from '#tests/core/nutrition/near.ts';
import { holds } from '#tests/support/holds.ts';

const expectScore = (given: Das28Input, score: number, band: string | null, tolerance = 1e-6) => {
  const result = resultOf(das28(given));
  near(result.score, score, tolerance);
  if (band !== null) expect(result.band).toBe(band);
};

describe('disease activity score on 28 joints, formulae of the developers’ site', () => {
  it('ESR form, 4 tender, 2 swollen, ESR 30, global 40: 4.456818, moderate [symptoms 43]', () => {
    expectScore({ form: 'esr', tender: 4, swollen: 2, esr: 30, globalHealth: 40 }, 4.456818, 'moderate');
  });
  it('CRP form, 4 tender, 2 swollen, CRP 12, global 40: 3.959362, moderate [symptoms 44]', () => {
    expectScore({ form: 'crp', tender: 4, swollen: 2, crp: 12, globalHealth: 40 }, 3.959362, 'moderate');
  });
  it('CRP form with nothing at all: 0.96, remission [symptoms 45]', () => {
    expectScore({ form: 'crp', tender: 0, swollen: 0, crp: 0, globalHealth: 0 }, 0.96, 'remission', 1e-12);
  });
  it('ESR form without joints, ESR 5, global 10: 1.266607, remission [symptoms 46]', () => {
    expectScore({ form: 'esr', tender: 0, swollen: 0, esr: 5, globalHealth: 10 }, 1.266607, 'remission');
  });
  it('12 tender, 10 swollen, global 70: 6.610468 with ESR 55, 6.055401 with CRP 35, high [symptoms 47]', () => {
    expectScore({ form: 'esr', tender: 12, swollen: 10, esr: 55, globalHealth: 70 }, 6.610468, 'high');
    expectScore({ form: 'crp', tender: 12, swollen: 10, crp: 35, globalHealth: 70 }, 6.055401, 'high');
  });
  it('three variables: 4.368563 with ESR 30, 3.833298 with CRP 12 [symptoms 48]', () => {
    expectScore({ form: 'esr-three', tender: 4, swollen: 2, esr: 30 }, 4.368563, null);
    expectScore({ form: 'crp-three', tender: 4, swollen: 2, crp: 12 }, 3.833298, null);
  });

  it('bands under, at and over 2.6, 3.2 and 5.1; 3.2 itself is low here', () => {
    expect([2.59, 2.6, 2.61].map(das28Band)).toEqual(['remission', 'low', 'low']);
    expect([3.19, 3.2, 3.21].map(das28Band)).toEqual(['low', 'low', 'moderate']);
    expect([5.09, 5.1, 5.11].map(das28Band)).toEqual(['moderate', 'moderate', 'high']);
  });
  it('near 3.2 the disagreement of the sources is said; far from it it is not', () => {
    const codes = (globalHealth: number) =>
      codesOf(das28({ form: 'esr', tender: 0, swollen: 0, esr: 50, globalHealth }));
    expect(codes(33)).toContain('sources-disagree');
    expect(codes(10)).not.toContain('sources-disagree');
  });
  it('what a form needs is asked for by name, and the global rating of a four-variable form is never taken as 0', () => {
    expect(codesOf(das28({ form: 'esr', tender: 1, swollen: 1 }))).toEqual(['input.esr missing']);
    expect(codesOf(das28({ form: 'crp', tender: 1, swollen: 1, crp: 3 }))).toEqual([
      'input.globalHealth missing',
    ]);
    expect(codesOf(das28({ form: 'crp-three', tender: 1, swollen: 1, esr: 3 }))).toEqual([
      'input.crp missing',
    ]);
  });
  it('one joint, one unit of blood test or of rating more never lowers the score', () => {
    holds(
      fc.constantFrom('esr' as const, 'crp' as const, 'esr-three' as const, 'crp-three' as const),
      fc.integer({ min: 0, max: 27 }),
      fc.integer({ min: 0, max: 27 }),
      fc.integer({ min: 1, max: 150 }),
      fc.integer({ min: 0, max: 99 }),
      (form, tender, swollen, blood, globalHealth) => {
        const given = { form, tender, swollen, esr: blood, crp: blood, globalHealth };
        const score = (change: Partial<Das28Input>) => resultOf(das28({ ...given, ...change })).score;
        const here = score({});
        const raised = [
          score({ tender: tender + 1 }),
          score({ swollen: swollen + 1 }),
          score({ esr: blood + 1, crp: blood + 1 }),
          score({ globalHealth: globalHealth + 1 }),
        ];
        return raised.every((value) => value >= here);
      },
    );
  });
});

describe('clinical and simplified indices', () => {
  const cdai = (tender: number, swollen: number, patientGlobal: number, clinicianGlobal: number) =>
    resultOf(cdaiRow.calculate({ tender, swollen, patientGlobal, clinicianGlobal }));
  it('4 + 2 + 4.0 + 3.0 is 13.0, moderate [symptoms 49]', () => {
    expect(cdai(4, 2, 4, 3)).toEqual({ score: 13, band: 'moderate' });
  });
  it('10.0 is low, 10.1 moderate, 22.0 moderate, 22.1 high [symptoms 50]', () => {
    const bands = [cdai(3, 2, 2.5, 2.5), cdai(3, 2, 2.6, 2.5), cdai(9, 8, 2.5, 2.5), cdai(9, 8, 2.6, 2.5)];
    expect(bands.map((one) => one.band)).toEqual(['low', 'moderate', 'moderate', 'high']);
  });
  it('2.8 is remission here however its decimals add up, 2.9 is low, and the disagreement is said', () => {
    expect([cdai(1, 1, 0.4, 0.4).band, cdai(0, 0, 1.9, 0.9).band, cdai(1, 1, 0.5, 0.4).band]).toEqual([
      'remission',
      'remission',
      'low',
    ]);
    const codes = (patientGlobal: number) =>
      codesOf(cdaiRow.calculate({ tender: 1, swollen: 1, patientGlobal, clinicianGlobal: 0.4 }));
    expect([codes(0.4), codes(0.5)]).toEqual([['sources-disagree'], []]);
  });
  it('the simplified index adds CRP in mg/dL; bands 3.3, 11 and 26 are from memory', () => {
    const sdai = (tender: number, crpMgDl: number) =>
      resultOf(sdaiRow.calculate({ tender, swollen: 0, patientGlobal: 0, clinicianGlobal: 0, crpMgDl }));
    expect(sdai(4, 1.2).score).toBe(5.2);
    expect([sdai(3, 0.3), sdai(3, 0.4)].map((one) => one.band)).toEqual(['remission', 'low']);
    expect([sdai(10, 1), sdai(10, 1.1)].map((one) => one.band)).toEqual(['low', 'moderate']);
    expect([sdai(25, 1), sdai(25, 1.1)].map((one) => one.band)).toEqual(['moderate', 'high']);
  });
});

describe('index of three patient ratings', () => {
  const rapid3 = (pain: number, patientGlobal: number, difficulty: number) =>
    resultOf(rapid3Row.calculate({ function: difficulty, pain, patientGlobal }));
  it('3.3 + 5 + 4 is 12.3, high; 12.0 is moderate and 6.0 low [symptoms 51]', () => {
    near(rapid3(5, 4, 3.3).score, 12.3, 1e-12);
    expect([rapid3(5, 4, 3.3), rapid3(5, 4, 3), rapid3(2, 2, 2)].map((one) => one.band)).toEqual([
      'high',
      'moderate',
      'low',
    ]);
  });
  it('3 itself is remission here, 3.1 low, 6.1 moderate; the disagreement at 3 is said', () => {
    expect([rapid3(1, 1, 1), rapid3(1.1, 1, 1), rapid3(2.1, 2, 2)].map((one) => one.band)).toEqual([
      'remission',
      'low',
      'moderate',
    ]);
    expect(codesOf(rapid3Row.calculate({ function: 1, pain: 1, patientGlobal: 1 }))).toEqual([
      'sources-disagree',
    ]);
  });
});

describe('flare of rheumatoid arthritis, criterion 2 of van der Maas 2013, the 3.2 read at the earlier visit', () => {
  const flare = (earlier: number, later: number) =>
    resultOf(rheumatoidFlareRow.calculate({ earlier, later })).flare;
  it('3.3 to 4.0 is a flare, 2.0 to 2.7 is not, 2.0 to 3.3 is [symptoms 52]', () => {
    expect([flare(3.3, 4), flare(2, 2.7), flare(2, 3.3)]).toEqual([true, false, true]);
  });
  it('a rise of exactly 0.6 or 1.2 is none, and the smaller bound begins at 3.2', () => {
    expect([flare(3.3, 3.9), flare(2, 3.2), flare(3.2, 3.9), flare(3.1, 3.9)]).toEqual([
      false,
      false,
      true,
      false,
    ]);
  });
  it('a fall is never a flare', () => {
    const score = fc.double({ min: 0, max: 10, noNaN: true });
    holds(score, score, (one, other) => !flare(Math.max(one, other), Math.min(one, other)));
  });
});
