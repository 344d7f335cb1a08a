/** The two remembered 5 cm regressions: arithmetic only, labelled as remembered. */
import { describe, expect, it } from 'vitest';
import { noteCodes, refusalsOf, resultOf } from '../row-answers.ts';

const narrow = 'limb-occlusion-pressure-5cm-from-memory';

describe('5 cm cuff regressions (Loenneke 2015; coefficients from memory, never used for a dose)', () => {
  const arm = (systolicMmhg: number, diastolicMmhg: number, circumferenceCm: number) => ({
    limb: 'arm',
    systolicMmhg,
    diastolicMmhg,
    circumferenceCm,
  });
  const leg = (systolicMmhg: number, diastolicMmhg: number, circumferenceCm: number) => ({
    ...arm(systolicMmhg, diastolicMmhg, circumferenceCm),
    limb: 'leg',
  });

  it.each([
    [14, arm(120, 75, 30), 148.171],
    [15, arm(140, 85, 34), 167.685],
    [16, leg(120, 75, 52), 250.88],
    [17, leg(110, 65, 45), 193.169],
    [18, leg(140, 85, 60), 323.604],
  ])('gives the remembered arithmetic and says so [occlusion %i]', (_, input, expected) => {
    expect(resultOf(narrow, input).pressureMmhg).toBeCloseTo(expected as number, 3);
    expect(noteCodes(narrow, input)).toContain('from-memory');
  });

  it('flags what lies above the 300 mmHg to which readings went [occlusion 18]', () => {
    expect(noteCodes(narrow, leg(140, 85, 60))).toContain('above-300-ceiling');
    expect(noteCodes(narrow, leg(120, 75, 52))).not.toContain('above-300-ceiling');
  });

  it('is refused where it falls to the diastolic pressure', () => {
    expect(refusalsOf(narrow, leg(90, 60, 25))).toEqual(['input.circumferenceCm outside-validity']);
  });
});
