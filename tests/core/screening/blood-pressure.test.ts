/** Categories of three guidelines, the severe flag, and the proposed start gate. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holds } from '#tests/support/holds.ts';
import { noteCodes, refusalsOf, resultOf } from '../prescribing/occlusion/row-answers.ts';

const category = (system: string, systolicMmhg: number, diastolicMmhg: number) =>
  resultOf('blood-pressure-category', { system, systolicMmhg, diastolicMmhg }).category;

describe('categories: ACC/AHA 2017 kept in 2025, ESC 2024, ESH 2023 (all seen as restated)', () => {
  it.each([
    [1, 118, 75, 'normal', 'elevated', 'optimal'],
    [2, 119, 79, 'normal', 'elevated', 'optimal'],
    [3, 120, 79, 'elevated', 'elevated', 'normal'],
    [4, 129, 80, 'stage-1', 'elevated', 'normal'],
    [5, 130, 79, 'stage-1', 'elevated', 'high-normal'],
    [6, 139, 89, 'stage-1', 'elevated', 'high-normal'],
    [7, 140, 70, 'stage-2', 'hypertension', 'grade-1'],
    [8, 128, 84, 'stage-1', 'elevated', 'normal'],
    [9, 150, 105, 'stage-2', 'hypertension', 'grade-2'],
    [10, 180, 120, 'stage-2', 'hypertension', 'grade-3'],
  ])('are those printed for the reading [screening %i]', (_, systolic, diastolic, usa, esc, esh) => {
    expect(category('acc-aha-2025', systolic, diastolic)).toBe(usa);
    expect(category('esc-2024', systolic, diastolic)).toBe(esc);
    expect(category('esh-2023', systolic, diastolic)).toBe(esh);
  });

  it('change at each printed bound and not under it', () => {
    const grades = [
      'optimal',
      'normal',
      'normal',
      'high-normal',
      'high-normal',
      'grade-1',
      'grade-1',
      'grade-2',
      'grade-2',
      'grade-3',
    ];
    const systolic = [119, 120, 129, 130, 139, 140, 159, 160, 179, 180];
    expect(systolic.map((mmhg) => category('esh-2023', mmhg, 60))).toEqual(grades);
    const diastolic = [79, 80, 84, 85, 89, 90, 99, 100, 109, 110];
    expect(diastolic.map((mmhg) => category('esh-2023', 115, mmhg))).toEqual(grades);
    expect([69, 70, 89, 90].map((mmhg) => category('esc-2024', 115, mmhg))).toEqual([
      'non-elevated',
      'elevated',
      'elevated',
      'hypertension',
    ]);
    expect([79, 80, 89, 90].map((mmhg) => category('acc-aha-2025', 115, mmhg))).toEqual([
      'normal',
      'stage-1',
      'stage-1',
      'stage-2',
    ]);
  });

  it.each([
    [11, 180, 120, false],
    [12, 181, 90, true],
    [13, 170, 121, true],
  ])(
    'severe is over 180 or over 120, strictly (2025 term) [screening %i]',
    (_, systolic, diastolic, severe) => {
      const result = resultOf('blood-pressure-category', {
        system: 'acc-aha-2025',
        systolicMmhg: systolic,
        diastolicMmhg: diastolic,
      });
      expect(result.severe).toBe(severe);
      expect(result.category).toBe('stage-2');
    },
  );

  it('severe is a term of the 2025 guideline alone', () => {
    const result = resultOf('blood-pressure-category', {
      system: 'esh-2023',
      systolicMmhg: 200,
      diastolicMmhg: 125,
    });
    expect(result).toEqual({ category: 'grade-3' });
  });

  it('a label is said to be no diagnosis, and a swapped pair is refused', () => {
    const pair = { system: 'esc-2024', systolicMmhg: 118, diastolicMmhg: 75 };
    expect(noteCodes('blood-pressure-category', pair)).toContain('no-diagnosis');
    expect(refusalsOf('blood-pressure-category', { ...pair, systolicMmhg: 75, diastolicMmhg: 118 })).toEqual([
      'input.diastolicMmhg inconsistent',
    ]);
  });
});

const gate = (systolicMmhg: number, diastolicMmhg: number) =>
  resultOf('exercise-start-gate', { systolicMmhg, diastolicMmhg }).gate as string;

describe('start gate: a proposal built on three lists that differ, equality held', () => {
  it.each([
    [14, 179, 109, 'hold-occlusion'],
    [15, 180, 80, 'hold-all'],
    [16, 150, 110, 'hold-all'],
    [17, 159, 99, 'start'],
    [18, 160, 70, 'hold-occlusion'],
    [19, 120, 100, 'hold-occlusion'],
    [20, 200, 110, 'hold-all'],
  ])('holds or starts as proposed [screening %i]', (_, systolic, diastolic, expected) => {
    expect(gate(systolic, diastolic)).toBe(expected);
  });

  it('between the two holds asks a clinician about other work [screening 14, 18, 19]', () => {
    expect(noteCodes('exercise-start-gate', { systolicMmhg: 160, diastolicMmhg: 70 })).toContain(
      'clinician-review',
    );
  });

  it('speaks of emergency care over 180 or over 120, not at them', () => {
    const speaks = (systolicMmhg: number, diastolicMmhg: number) =>
      noteCodes('exercise-start-gate', { systolicMmhg, diastolicMmhg }).includes('emergency-with-symptoms');
    expect([speaks(180, 120), speaks(181, 90), speaks(170, 121)]).toEqual([false, true, true]);
  });

  it('never opens further when pressure rises', () => {
    const order = ['start', 'hold-occlusion', 'hold-all'];
    const pairs = fc.record({
      systolic: fc.integer({ min: 90, max: 280 }),
      diastolic: fc.integer({ min: 40, max: 85 }),
      rise: fc.integer({ min: 0, max: 20 }),
      diastolicRise: fc.integer({ min: 0, max: 40 }),
    });
    holds(pairs, ({ systolic, diastolic, rise, diastolicRise }) => {
      const top = Math.min(diastolic + diastolicRise, systolic + rise - 1);
      expect(order.indexOf(gate(systolic + rise, Math.max(top, diastolic)))).toBeGreaterThanOrEqual(
        order.indexOf(gate(systolic, diastolic)),
      );
    });
  });
});
