import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acceptableSymptomStateRow } from '#core/assessment/change/acceptable-symptom-state.ts';
import {
  detectableChangeFromPairsRow,
  minimalDetectableChange,
} from '#core/assessment/change/minimal-detectable-change.ts';
import { minimalImprovementRow } from '#core/assessment/change/minimal-improvement.ts';
import { painRatingChangeRow } from '#core/assessment/change/pain-rating-change.ts';
import { reliableChange } from '#core/assessment/change/reliable-change.ts';
import {
  patientChosenActivitiesChangeRow,
  patientChosenActivitiesRow,
} from '#core/assessment/measures/patient-chosen-activity.ts';
import { codesOf, resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { near } from '#tests/core/nutrition/near.ts';
import { holds } from '#tests/support/holds.ts';

describe('error of measuring and reliable change (Jacobson and Truax 1991)', () => {
  it('32.5 to 47.5, deviation 7.5, reliability .80 (from memory of the paper): 3.354102, 4.743416 and 3.162278 [symptoms 37]', () => {
    const change = resultOf(
      reliableChange({ standardDeviation: 7.5, reliability: 0.8, before: 32.5, after: 47.5 }),
    );
    near(change.standardErrorOfMeasurement, 3.354102, 1e-6);
    near(change.differenceDeviation, 4.743416, 1e-6);
    near(change.index, 3.162278, 1e-6);
    expect(change.reliable).toBe(true);
  });
  it('a standard error of 3.07 gives 4.341636 and 8.509606, printed 4.34 and 8.51 in an open textbook [symptoms 38]', () => {
    near(minimalDetectableChange(3.07).differenceDeviation, 4.341636, 1e-6);
    near(minimalDetectableChange(3.07).mdc95, 8.509606, 1e-6);
  });
  it('standard errors of .48 (Alghadir 2018) and 1.02 give 1.330492 and 2.827296 [symptoms 39]', () => {
    near(minimalDetectableChange(0.48).mdc95, 1.330492, 1e-6);
    near(minimalDetectableChange(1.02).mdc95, 2.827296, 1e-6);
  });
  it('at 90 % the same error of .48 gives 1.116564, computed by 1.644854 times the root of two', () => {
    near(minimalDetectableChange(0.48).mdc90, 1.116564, 1e-6);
  });
  it('an index of exactly 1.96 is not reliable, over it is, in either direction', () => {
    // A deviation of 1 over the root of two with no reliability makes the deviation of a difference one.
    const reliable = (after: number) =>
      resultOf(reliableChange({ standardDeviation: Math.SQRT1_2, reliability: 0, before: 0, after }))
        .reliable;
    expect([1.95, 1.96, 1.97, -1.97].map(reliable)).toEqual([false, false, true, true]);
  });
  it('a reliability of 1 leaves no error and is refused', () => {
    expect(codesOf(reliableChange({ standardDeviation: 5, reliability: 1, before: 1, after: 2 }))).toEqual([
      'input.reliability outside-validity',
    ]);
  });
  it('reliable exactly when the change is beyond the detectable one', () => {
    const score = fc.integer({ min: 0, max: 100 });
    holds(
      fc.double({ min: 1, max: 30, noNaN: true }),
      fc.double({ min: 0, max: 0.99, noNaN: true }),
      score,
      score,
      (standardDeviation, reliability, before, after) => {
        const change = resultOf(reliableChange({ standardDeviation, reliability, before, after }));
        return change.reliable === Math.abs(after - before) > change.mdc95;
      },
    );
  });
  it('own double measures: differences of 1, −1, 1, −1, 0 give an error of 0.7071 and 1.9600 at 95 %', () => {
    const pairs = resultOf(
      detectableChangeFromPairsRow.calculate({ first: [40, 40, 40, 40, 40], second: [41, 39, 41, 39, 40] }),
    );
    near(pairs.standardErrorOfMeasurement, Math.SQRT1_2, 1e-12);
    near(pairs.mdc95, 1.96, 1e-12);
    expect(
      codesOf(detectableChangeFromPairsRow.calculate({ first: [1, 2, 3, 4, 5], second: [1, 2, 3, 4] })),
    ).toEqual(['input.second inconsistent']);
  });
});

describe('acceptable state and important improvement in knee and hip osteoarthritis', () => {
  const acceptable = (
    joint: 'knee' | 'hip',
    measure: 'pain' | 'patient-global' | 'function',
    value: number,
  ) => resultOf(acceptableSymptomStateRow.calculate({ joint, measure, value })).acceptable;
  it('knee pain of 32.3 mm is acceptable, of 33 mm is not (Tubach 2005) [symptoms 58]', () => {
    expect([32.2, 32.3, 33].map((value) => acceptable('knee', 'pain', value))).toEqual([true, true, false]);
  });
  it('the other five figures of Tubach 2005: 32.0, 31.0; 35.0, 34.6, 34.4', () => {
    const figures = [
      ['knee', 'patient-global', 32],
      ['knee', 'function', 31],
      ['hip', 'pain', 35],
      ['hip', 'patient-global', 34.6],
      ['hip', 'function', 34.4],
    ] as const;
    for (const [joint, measure, figure] of figures) {
      expect([figure, figure + 0.1].map((value) => acceptable(joint, measure, value))).toEqual([true, false]);
    }
  });
  it('the smallest important falls, all from memory: just under and at each', () => {
    const figures = [
      ['knee', 'pain', 19.9],
      ['knee', 'patient-global', 18.3],
      ['knee', 'function', 9.1],
      ['hip', 'pain', 15.3],
      ['hip', 'patient-global', 15.2],
      ['hip', 'function', 7.9],
    ] as const;
    for (const [joint, measure, fall] of figures) {
      const at = (size: number) =>
        resultOf(minimalImprovementRow.calculate({ joint, measure, before: 60, after: 60 - size })).important;
      expect([at(fall - 0.1), at(fall), at(-30)]).toEqual([false, true, false]);
    }
    expect(
      codesOf(minimalImprovementRow.calculate({ joint: 'hip', measure: 'pain', before: 1, after: 1 })),
    ).toEqual(['from-memory']);
  });
});

describe('change of a 0 to 10 pain rating', () => {
  const change = (group: 'knee-osteoarthritis' | 'low-back-pain', before: number, after: number) =>
    resultOf(painRatingChangeRow.calculate({ group, before, after }));
  it('2 points are beyond error by the knee figure and within it by the back figure; 3 are beyond both', () => {
    expect(change('knee-osteoarthritis', 5, 3).direction).toBe('better');
    expect(change('low-back-pain', 5, 3).direction).toBe('within-error');
    expect(change('low-back-pain', 5, 8).direction).toBe('worse');
    expect(change('knee-osteoarthritis', 5, 4).direction).toBe('within-error');
  });
  it('important by points or by percent: 1 or 15 %, 2 or 33 % (Salaffi 2004), 2 or 30 % (Farrar 2001)', () => {
    expect(change('knee-osteoarthritis', 8, 7)).toMatchObject({ slightlyBetter: true, muchBetter: false });
    expect(change('knee-osteoarthritis', 3, 2)).toMatchObject({ muchBetter: true, importantFall: true });
    expect(change('knee-osteoarthritis', 10, 9.1)).toMatchObject({ slightlyBetter: false });
    const knee = (before: number, after: number) => change('knee-osteoarthritis', before, after);
    expect([3.4, 3.41].map((after) => knee(4, after).slightlyBetter)).toEqual([true, false]);
    expect([2.01, 2.02].map((after) => knee(3, after).muchBetter)).toEqual([true, false]);
    expect([2.1, 2.11].map((after) => knee(3, after).importantFall)).toEqual([true, false]);
    expect(change('knee-osteoarthritis', 5, 3.5)).toMatchObject({ muchBetter: false, importantFall: true });
  });
  it('pain that was 0 and stayed or rose is no improvement of any kind', () => {
    const none = { slightlyBetter: false, importantFall: false };
    expect(change('knee-osteoarthritis', 0, 0)).toMatchObject(none);
    expect(change('knee-osteoarthritis', 0, 2)).toMatchObject({
      ...none,
      direction: 'worse',
      muchBetter: false,
    });
  });
});

describe('activities chosen by the patient', () => {
  it('the score is the mean of three to five', () => {
    expect(resultOf(patientChosenActivitiesRow.calculate({ scores: [4, 5, 3] })).mean).toBe(4);
  });
  it('mean: 2 points are within error, more is beyond; one activity: 3 and more than 3 (from memory, 90 %)', () => {
    const change = (after: readonly number[]) =>
      resultOf(patientChosenActivitiesChangeRow.calculate({ before: [2, 2, 2], after }));
    expect(change([4, 4, 4]).direction).toBe('within-error');
    expect(change([4, 4, 4.1]).direction).toBe('better');
    expect(change([5, 5.1, 2]).single.map((one) => one.direction)).toEqual([
      'within-error',
      'better',
      'within-error',
    ]);
  });
  it('another number of activities is another scale and is refused', () => {
    expect(
      codesOf(patientChosenActivitiesChangeRow.calculate({ before: [2, 2, 2], after: [2, 2, 2, 2] })),
    ).toEqual(['input.after inconsistent']);
  });
});
