/**
 * How often a one-sided cumulative sum alarms falsely on a pain diary, and how often it catches a rise.
 *
 * Computed on invented diaries (20,000 a row): whole numbers 0 to 10, mean 3, deviation 1, baseline estimated from
 * its first days, allowance one half. Real diaries may be worse. It is why a signal may hold and nothing more.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';

/** Shares by baseline days and day-to-day correlation: h4 within 28 and 60 days, h5 the same, caught by h5 within 7 and 14. */
const diaryAlarms = {
  '14': {
    '0': [0.195, 0.317, 0.127, 0.222, 0.932, 0.997],
    '0.3': [0.342, 0.51, 0.258, 0.402, 0.903, 0.988],
    '0.5': [0.444, 0.624, 0.356, 0.525, 0.877, 0.978],
  },
  '28': {
    '0': [0.145, 0.265, 0.075, 0.15, 0.952, 0.999],
    '0.3': [0.288, 0.477, 0.201, 0.353, 0.919, 0.996],
    '0.5': [0.389, 0.6, 0.302, 0.496, 0.887, 0.988],
  },
} as const satisfies Record<
  string,
  Record<string, readonly [number, number, number, number, number, number]>
>;

export const diaryFalseAlarmsRow = calculation({
  id: 'diary-false-alarms',
  title: 'False alarms of a chart on a pain diary',
  area: 'series',
  input: [
    { name: 'baselineDays', kind: 'enum', values: ['14', '28'] },
    { name: 'dayToDayCorrelation', kind: 'enum', values: ['0', '0.3', '0.5'] },
  ],
  result: [
    { name: 'falseH4Within28Days', unit: '1' },
    { name: 'falseH4Within60Days', unit: '1' },
    { name: 'falseH5Within28Days', unit: '1' },
    { name: 'falseH5Within60Days', unit: '1' },
    { name: 'caughtH5Within7Days', unit: '1', about: 'a rise of 2 points' },
    { name: 'caughtH5Within14Days', unit: '1', about: 'a rise of 2 points' },
  ],
  citations: [
    { source: 'diary-chart-simulation', locator: '20,000 runs a row, seed 20240601', mark: 'computed' },
  ],
  calculate: (input) => {
    const [h4Month, h4Two, h5Month, h5Two, caughtWeek, caughtTwo] =
      diaryAlarms[input.baselineDays][input.dayToDayCorrelation];
    return answer(
      {
        falseH4Within28Days: h4Month,
        falseH4Within60Days: h4Two,
        falseH5Within28Days: h5Month,
        falseH5Within60Days: h5Two,
        caughtH5Within7Days: caughtWeek,
        caughtH5Within14Days: caughtTwo,
      },
      [{ code: 'invented-diaries', text: 'From invented diaries, not from patients.' }],
    );
  },
  example: { baselineDays: '14', dayToDayCorrelation: '0.3' },
});
