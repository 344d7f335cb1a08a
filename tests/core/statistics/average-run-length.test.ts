import { describe, expect, it } from 'vitest';
import {
  averageRunLengthRow,
  type averageRunLengths,
  shiftsInSigma,
} from '#core/statistics/average-run-length.ts';
import { diaryFalseAlarmsRow } from '#core/statistics/diary-false-alarms.ts';
import { codesOf, resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { near } from '#tests/core/nutrition/near.ts';
import { cusumRunLength, ewmaRunLength } from './run-length-integrals.ts';

const tabled = (design: keyof typeof averageRunLengths, shiftInSigma: number) =>
  resultOf(averageRunLengthRow.calculate({ design, shiftInSigma })).averageRunLength;

/** Two one-sided sums of a symmetric chart in control combine as rates. */
const twoSidedAtZero = (interval: number) => cusumRunLength(0.5, interval, 0) / 2;

describe('average run length: table against integral equations solved here and against r-cran-spc 0.6.7', () => {
  it('one-sided, interval 4: 335.37 and 8.38 at a shift of 0 and 1 [symptoms 15]', () => {
    near(tabled('cusum-h4-one-sided', 0), 335.37, 0.01);
    near(tabled('cusum-h4-one-sided', 1), 8.38, 0.01);
    near(cusumRunLength(0.5, 4, 0), 335.37, 0.01);
    near(cusumRunLength(0.5, 4, 1), 8.38, 0.01);
  });
  it('one-sided, interval 5: 930.89 and 10.38 at a shift of 0 and 1 [symptoms 16]', () => {
    near(tabled('cusum-h5-one-sided', 0), 930.89, 0.01);
    near(tabled('cusum-h5-one-sided', 1), 10.38, 0.01);
    near(cusumRunLength(0.5, 5, 0), 930.89, 0.01);
    near(cusumRunLength(0.5, 5, 1), 10.38, 0.01);
  });
  it('two-sided, interval 4 and 5: 167.68 and 465.44 without a shift [symptoms 17]', () => {
    near(tabled('cusum-h4-two-sided', 0), 167.68, 0.01);
    near(tabled('cusum-h5-two-sided', 0), 465.44, 0.01);
    near(twoSidedAtZero(4), 167.68, 0.01);
    near(twoSidedAtZero(5), 465.44, 0.01);
  });
  it('moving average, weight 0.2 and width 2.962: 499.74 and 10.54 [symptoms 18]', () => {
    near(tabled('ewma-0.2-2.962', 0), 499.74, 0.01);
    near(tabled('ewma-0.2-2.962', 1), 10.54, 0.01);
    near(ewmaRunLength(0.2, 2.962, 0), 499.74, 0.01);
    near(ewmaRunLength(0.2, 2.962, 1), 10.54, 0.01);
  });

  const oneSided = [
    ['cusum-h4-one-sided', 4],
    ['cusum-h5-one-sided', 5],
  ] as const;
  it.each(oneSided)('the whole column %s agrees with the integral equation', (design, interval) => {
    for (const shift of shiftsInSigma)
      near(tabled(design, shift), cusumRunLength(0.5, interval, shift), 0.0051);
  });

  const twoSided = [
    ['cusum-h4-two-sided', 4],
    ['cusum-h5-two-sided', 5],
  ] as const;
  it.each(twoSided)(
    'the whole column %s agrees with two one-sided sums taken together',
    (design, interval) => {
      shiftsInSigma.forEach((shift) => {
        const rates = 1 / cusumRunLength(0.5, interval, shift) + 1 / cusumRunLength(0.5, interval, -shift);
        near(tabled(design, shift), 1 / rates, 0.0051);
      });
    },
  );

  const averages = [
    ['ewma-0.05-2.615', 0.05, 2.615],
    ['ewma-0.1-2.814', 0.1, 2.814],
    ['ewma-0.2-2.962', 0.2, 2.962],
    ['ewma-0.25-2.998', 0.25, 2.998],
    ['ewma-0.3-3', 0.3, 3],
    ['ewma-0.4-3.054', 0.4, 3.054],
  ] as const;
  it.each(averages)('the whole column %s agrees with the integral equation', (design, lambda, width) => {
    for (const shift of shiftsInSigma)
      near(tabled(design, shift), ewmaRunLength(lambda, width, shift), 0.0101);
  });

  it('is refused between the tabled shifts, and says that it does not hold for diaries', () => {
    const row = (shiftInSigma: number) =>
      averageRunLengthRow.calculate({ design: 'cusum-h5-one-sided', shiftInSigma });
    expect(codesOf(row(0.6))).toEqual(['input.shiftInSigma not-listed']);
    expect(codesOf(row(0.5))).toEqual(['not-for-diaries']);
  });
});

describe('false alarms on invented diaries', () => {
  const row = (baselineDays: '14' | '28', dayToDayCorrelation: '0' | '0.3' | '0.5') =>
    resultOf(diaryFalseAlarmsRow.calculate({ baselineDays, dayToDayCorrelation }));
  it('14 days and a day-to-day correlation of 0.3: 25.8 % alarm falsely within 28 days at interval 5', () => {
    expect(row('14', '0.3')).toEqual({
      falseH4Within28Days: 0.342,
      falseH4Within60Days: 0.51,
      falseH5Within28Days: 0.258,
      falseH5Within60Days: 0.402,
      caughtH5Within7Days: 0.903,
      caughtH5Within14Days: 0.988,
    });
  });
  it('more correlation always means more false alarms, a longer baseline fewer', () => {
    const falseAlarms = (days: '14' | '28') =>
      (['0', '0.3', '0.5'] as const).map((correlation) => row(days, correlation).falseH5Within28Days);
    const [short, long] = [falseAlarms('14'), falseAlarms('28')];
    expect([...short].sort()).toEqual(short);
    expect([...long].sort()).toEqual(long);
    for (const [at, share] of short.entries()) expect(long[at]).toBeLessThan(share);
  });
});
