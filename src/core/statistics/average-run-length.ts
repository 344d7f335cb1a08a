/**
 * Average run length of a chart by the size of the shift: how long until an alarm, true or false.
 *
 * For independent normal values with known mean and deviation. It does not hold for diary scores; see the table
 * of false alarms in diaries. Moving-average columns are two-sided with constant limits.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, refuse } from '../outcome.ts';

export const shiftsInSigma = [0, 0.25, 0.5, 0.75, 1, 1.5, 2, 3] as const;

export const averageRunLengths = {
  'cusum-h4-one-sided': [335.37, 77.08, 26.68, 13.29, 8.38, 4.75, 3.34, 2.19],
  'cusum-h4-two-sided': [167.68, 74.22, 26.63, 13.29, 8.38, 4.75, 3.34, 2.19],
  'cusum-h5-one-sided': [930.89, 141.69, 38.01, 17.05, 10.38, 5.75, 4.01, 2.57],
  'cusum-h5-two-sided': [465.44, 139.49, 38, 17.05, 10.38, 5.75, 4.01, 2.57],
  'ewma-0.05-2.615': [499.93, 84.01, 28.76, 16.37, 11.38, 7.11, 5.22, 3.5],
  'ewma-0.1-2.814': [499.58, 106.32, 31.3, 15.85, 10.33, 6.08, 4.36, 2.87],
  'ewma-0.2-2.962': [499.74, 150.22, 41.76, 18.15, 10.54, 5.5, 3.74, 2.38],
  'ewma-0.25-2.998': [499.84, 170.3, 48.29, 20.11, 11.14, 5.46, 3.61, 2.26],
  'ewma-0.3-3': [465.55, 178.74, 53.16, 21.83, 11.7, 5.45, 3.51, 2.15],
  'ewma-0.4-3.054': [499.95, 223.73, 71.2, 28.42, 14.26, 5.87, 3.52, 2.02],
} as const satisfies Record<string, readonly number[]>;

export const averageRunLengthRow = calculation({
  id: 'average-run-length',
  title: 'Average run length of a chart',
  area: 'series',
  input: [
    {
      name: 'design',
      kind: 'enum',
      values: [
        'cusum-h4-one-sided',
        'cusum-h4-two-sided',
        'cusum-h5-one-sided',
        'cusum-h5-two-sided',
        'ewma-0.05-2.615',
        'ewma-0.1-2.814',
        'ewma-0.2-2.962',
        'ewma-0.25-2.998',
        'ewma-0.3-3',
        'ewma-0.4-3.054',
      ],
      about: 'Sums have an allowance of half a deviation; averages name weight and width.',
    },
    {
      name: 'shiftInSigma',
      kind: 'number',
      unit: '1',
      min: 0,
      max: 3,
      about: 'One of 0, 0.25, 0.5, 0.75, 1, 1.5, 2, 3; nothing between is computed.',
    },
  ],
  result: [{ name: 'averageRunLength', unit: '{value}' }],
  citations: [
    {
      source: 'spc-package',
      locator: 'xcusum.arl and xewma.arl',
      mark: 'computed',
      remark: 'The two-sided sums and the designs near 500 agree with published tables recalled from memory.',
    },
  ],
  calculate: (input) => {
    const place = shiftsInSigma.indexOf(input.shiftInSigma as (typeof shiftsInSigma)[number]);
    if (place < 0) {
      return refuse(
        'shiftInSigma',
        'not-listed',
        `Give one of the tabled shifts: ${shiftsInSigma.join(', ')}.`,
      );
    }
    return answer({ averageRunLength: averageRunLengths[input.design][place] as number }, [
      {
        code: 'not-for-diaries',
        text: 'For independent normal values with a known baseline; in pain diaries false alarms come several times sooner.',
      },
    ]);
  },
  example: { design: 'cusum-h5-one-sided', shiftInSigma: 1 },
});
