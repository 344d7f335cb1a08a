import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeChange } from '#core/assessment/change/change-beyond-error.ts';
import {
  type EffusionGrade,
  effusionOrder,
  kneeEffusionChangeRow,
} from '#core/assessment/change/knee-effusion-change.ts';
import { chairStandHipStateRow } from '#core/assessment/function-tests/chair-stand-hip-state.ts';
import { fiveTimesSitToStandRow } from '#core/assessment/function-tests/five-times-sit-to-stand.ts';
import { gaitSpeedRow } from '#core/assessment/function-tests/gait-speed.ts';
import { gaitSpeedChangeRow } from '#core/assessment/function-tests/gait-speed-change.ts';
import { chairStandChangeRow, chairStandNorm } from '#core/assessment/measures/chair-stand-30s.ts';
import { gripStrengthRow } from '#core/assessment/measures/grip.ts';
import { timedUpAndGoChangeRow, timedUpAndGoRow } from '#core/assessment/measures/timed-up-and-go.ts';
import { codesOf, resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { holds } from '#tests/support/holds.ts';

type Sex = 'female' | 'male';
const below = (sex: Sex, ageYears: number, stands: number) =>
  resultOf(chairStandNorm({ sex, ageYears, stands })).belowAverage;

describe('30-second chair stand against the below-average table (Rikli and Jones 1999, read on two toolkit pages)', () => {
  it('a man of 72 with 11 stands is below, with 12 is not [symptoms 53]', () => {
    expect([below('male', 72, 11), below('male', 72, 12)]).toEqual([true, false]);
  });
  it('a woman of 92 with 3 stands is below, with 4 is not; at 59 and 95 there is no norm [symptoms 54]', () => {
    expect([below('female', 92, 3), below('female', 92, 4)]).toEqual([true, false]);
    for (const ageYears of [59, 95]) {
      expect(codesOf(chairStandNorm({ sex: 'female', ageYears, stands: 10 }))).toEqual([
        'input.ageYears outside-validity',
      ]);
    }
  });
  it('the whole table, at the first and the last year of each band', () => {
    const table = [
      [60, 64, 14, 12],
      [65, 69, 12, 11],
      [70, 74, 12, 10],
      [75, 79, 11, 10],
      [80, 84, 10, 9],
      [85, 89, 8, 8],
      [90, 94, 7, 4],
    ] as const;
    for (const [from, to, man, woman] of table) {
      for (const ageYears of [from, to, to + 0.9]) {
        expect(resultOf(chairStandNorm({ sex: 'male', ageYears, stands: 0 })).threshold).toBe(man);
        expect(resultOf(chairStandNorm({ sex: 'female', ageYears, stands: 0 })).threshold).toBe(woman);
      }
    }
  });
  it('one stand more never makes a person below average', () => {
    holds(
      fc.constantFrom<Sex>('female', 'male'),
      fc.double({ min: 60, max: 94.9, noNaN: true }),
      fc.integer({ min: 0, max: 40 }),
      (sex, age, stands) => below(sex, age, stands) || !below(sex, age, stands + 1),
    );
  });
});

describe('a change is called a change only beyond the error of measuring', () => {
  it('chair stand: 2 more stands is within error, 3 beyond (2.5, Gill 2022) [symptoms 55]', () => {
    const direction = (after: number) =>
      resultOf(chairStandChangeRow.calculate({ before: 10, after })).direction;
    expect([12, 13, 8, 7].map(direction)).toEqual(['within-error', 'better', 'within-error', 'worse']);
  });
  it('timed up and go: 1.0 s is within error, 1.2 s beyond with the same rater (1.10, Alghadir 2015) [symptoms 57]', () => {
    const direction = (afterSeconds: number, rater: 'same' | 'other') =>
      resultOf(timedUpAndGoChangeRow.calculate({ beforeSeconds: 12, afterSeconds, rater })).direction;
    expect([direction(11, 'same'), direction(10.8, 'same')]).toEqual(['within-error', 'better']);
    expect([direction(13.12, 'same'), direction(13.12, 'other')]).toEqual(['worse', 'within-error']);
    expect([direction(13.14, 'other'), direction(13.145, 'other')]).toEqual(['within-error', 'worse']);
  });
  it('exactly the detectable change is still error, and decimals do not cross it by rounding', () => {
    expect(judgeChange(2.3, 3.4, 1.1, 'higher')).toMatchObject({
      beyondError: false,
      direction: 'within-error',
    });
    expect(judgeChange(2.3, 3.41, 1.1, 'higher').beyondError).toBe(true);
  });
  it('before and after exchanged, better and worse change places', () => {
    const score = fc.integer({ min: 0, max: 100 }).map((tenths) => tenths / 10);
    const opposite = { better: 'worse', worse: 'better', 'within-error': 'within-error' } as const;
    holds(score, score, score, (before, after, error) => {
      const there = judgeChange(before, after, error, 'lower');
      const back = judgeChange(after, before, error, 'lower');
      return back.direction === opposite[there.direction] && there.change === 0 - back.change;
    });
  });
});

describe('cuts of the function tests', () => {
  it('grip under 27 kg in men and 16 kg in women is low, the figure itself is not (EWGSOP2) [symptoms 56]', () => {
    const low = (sex: Sex, forceKg: number) => resultOf(gripStrengthRow.calculate({ sex, forceKg })).low;
    expect([26.9, 27, 27.1].map((force) => low('male', force))).toEqual([true, false, false]);
    expect([15.9, 16, 16.1].map((force) => low('female', force))).toEqual([true, false, false]);
  });
  it('timed up and go from 12 s (from memory) and from 20 s (EWGSOP2)', () => {
    const at = (seconds: number) => resultOf(timedUpAndGoRow.calculate({ seconds }));
    expect([11.9, 12, 12.1].map((seconds) => at(seconds).fallRisk)).toEqual([false, true, true]);
    expect([19.9, 20, 20.1].map((seconds) => at(seconds).severelyLow)).toEqual([false, true, true]);
    expect(codesOf(timedUpAndGoRow.calculate({ seconds: 10 }))).toEqual(['from-memory']);
  });
  it('five times sit-to-stand from 13.6 s, and over 15 s (EWGSOP2)', () => {
    const at = (seconds: number) => resultOf(fiveTimesSitToStandRow.calculate({ seconds }));
    expect([13.5, 13.6, 13.7].map((seconds) => at(seconds).mobilityRisk)).toEqual([false, true, true]);
    expect([14.9, 15, 15.1].map((seconds) => at(seconds).lowStrength)).toEqual([false, false, true]);
  });
  it('gait speed at 0.8 (EWGSOP2), under 1.0 (Cesari 2005) and under 0.76 m/s', () => {
    const at = (seconds: number) => resultOf(gaitSpeedRow.calculate({ distanceM: 4, seconds }));
    expect([5.01, 5, 4.99].map((seconds) => at(seconds).lowPerformance)).toEqual([true, true, false]);
    expect([4.01, 4, 3.99].map((seconds) => at(seconds).underOne)).toEqual([true, false, false]);
    expect([5.3, 5.25].map((seconds) => at(seconds).underFallersCut)).toEqual([true, false]);
  });
  it('gait speed change of 0.05 and 0.10 m/s (from memory) is sized, never called beyond error', () => {
    const size = (afterMPerS: number) =>
      resultOf(gaitSpeedChangeRow.calculate({ beforeMPerS: 0.8, afterMPerS })).size;
    expect([0.84, 0.85, 0.89, 0.9, 0.7].map(size)).toEqual([
      'under-small',
      'small',
      'small',
      'substantial',
      'substantial',
    ]);
    expect(codesOf(gaitSpeedChangeRow.calculate({ beforeMPerS: 0.8, afterMPerS: 1 }))).toEqual([
      'no-error-figure',
    ]);
  });
  it('hip osteoarthritis: 11 stands at nine weeks, 12 at a year', () => {
    const ok = (after: '9-weeks' | '1-year', stands: number) =>
      resultOf(chairStandHipStateRow.calculate({ after, stands })).acceptable;
    expect([ok('9-weeks', 10), ok('9-weeks', 11), ok('1-year', 11), ok('1-year', 12)]).toEqual([
      false,
      true,
      false,
      true,
    ]);
  });
});

describe('knee effusion, the five grades of Sturgill 2009 as restated', () => {
  it('zero, trace, 1+, 2+ and 3+ stand in this order [symptoms 59]', () => {
    const grades: readonly EffusionGrade[] = ['zero', 'trace', '1+', '2+', '3+'];
    expect(grades.map(effusionOrder)).toEqual([0, 1, 2, 3, 4]);
  });
  it('one grade of change is within the disagreement of raters, two are beyond', () => {
    const beyond = (earlier: EffusionGrade, later: EffusionGrade) =>
      resultOf(kneeEffusionChangeRow.calculate({ earlier, later })).beyondRaterDisagreement;
    expect([
      beyond('trace', 'trace'),
      beyond('trace', '1+'),
      beyond('trace', '2+'),
      beyond('3+', '1+'),
    ]).toEqual([false, false, true, true]);
  });
});
