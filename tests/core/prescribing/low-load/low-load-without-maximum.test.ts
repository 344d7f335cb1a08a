import { describe, expect, it } from 'vitest';
import { codesOf } from '../../assessment/strength/result-of.ts';
import { proposal, propose, warned } from './low-load-proposal.ts';

describe('a test that no equation holds for', () => {
  const longSet = (repetitions: number, availableKg = [2, 3, 4, 5]) => ({
    test: { loadKg: 4, repetitions },
    availableKg,
  });

  it('20 repetitions give a maximum, 21 none: then dosed by effort with the load of the test', () => {
    expect(proposal(longSet(20)).dose.oneRepMaxKg).not.toBeNull();
    const made = proposal(longSet(21));
    expect(made.dose.oneRepMaxKg).toBeNull();
    expect([made.dose.loadKg, made.truePercent, made.spread, made.equation]).toEqual([4, null, null, null]);
    expect(codesOf(propose(longSet(21)))).toContain('no-maximum-from-long-sets');
  });

  it('never takes a heavier load than the one tested', () => {
    expect(proposal(longSet(60)).dose.loadKg).toBe(4);
  });

  it('says when the band is reached with much in reserve: 27 with 2 in reserve is just 25, 28 is over', () => {
    expect(warned(longSet(27))).not.toContain('light-for-band');
    expect(warned(longSet(28))).toContain('light-for-band');
  });

  it('says when the load is too heavy for a band set higher', () => {
    expect(warned({ ...longSet(22), repetitionsLow: 21, repetitionsHigh: 30 })).toContain('heavy-for-band');
    expect(warned({ ...longSet(23), repetitionsLow: 21, repetitionsHigh: 30 })).not.toContain(
      'heavy-for-band',
    );
  });

  it('an equation chosen by hand outside its sets is refused instead of falling back', () => {
    expect(codesOf(propose({ ...longSet(21), equation: 'brzycki' }))).toEqual([
      'input.equation outside-validity',
    ]);
    expect(proposal({ ...longSet(10), equation: 'brzycki' }).dose.oneRepMaxKg).toBeCloseTo(5.3333, 4);
  });
});
