/**
 * Theil–Sen slope: the median of the slopes of all pairs.
 *
 * With real day numbers where days are missing. One outlying day hardly moves it. The intercept is the median
 * value less the slope times the median time; other programs take another one, so it is named here.
 */
import { calculation } from '../calculations/calculation.ts';
import type { Field } from '../calculations/describe.ts';
import { answer, type Outcome, refuse } from '../outcome.ts';
import { medianOf } from './moments.ts';
import { paired } from './series-fields.ts';

/** Closer than this, two times are taken for a mistake: the slope between them has no meaning. */
const nearestTimes = 1e-6;

const input = [
  paired('values', 2),
  {
    ...paired('times', 2),
    optional: true,
    about: 'Day numbers; left out, the values are taken as evenly spaced by one.',
  },
] as const satisfies readonly Field[];

export interface SenSlope {
  readonly slope: number;
  readonly intercept: number;
  readonly pairs: number;
}

const timesRefusal = (values: readonly number[], times: readonly number[]): Outcome<never> | null => {
  if (times.length !== values.length) {
    return refuse('times', 'inconsistent', 'Give one time for each value.');
  }
  const ordered = [...times].sort((a, b) => a - b);
  const close = ordered.some((time, place) => {
    const gap = place === 0 ? 0 : time - (ordered[place - 1] as number);
    return gap > 0 && gap < nearestTimes;
  });
  if (close)
    return refuse('times', 'outside-validity', 'Two times lie nearer than a millionth; give day numbers.');
  if (ordered[0] === ordered.at(-1))
    return refuse('times', 'outside-validity', 'All times are the same; a slope needs two.');
  return null;
};

export const senSlope = (values: readonly number[], given?: readonly number[]): Outcome<SenSlope> => {
  const times = given ?? values.map((_, place) => place);
  const refused = timesRefusal(values, times);
  if (refused) return refused;
  const slopes: number[] = [];
  for (let later = 1; later < values.length; later += 1) {
    for (let earlier = 0; earlier < later; earlier += 1) {
      const span = (times[later] as number) - (times[earlier] as number);
      if (span !== 0) slopes.push(((values[later] as number) - (values[earlier] as number)) / span);
    }
  }
  const slope = medianOf(slopes);
  return answer({ slope, intercept: medianOf(values) - slope * medianOf(times), pairs: slopes.length });
};

export const senSlopeRow = calculation({
  id: 'sen-slope',
  title: 'Median slope of a series',
  area: 'series',
  input,
  result: [
    { name: 'slope', unit: '1' },
    {
      name: 'intercept',
      unit: '1',
      about: 'median value less slope times median time; times from 0 when left out',
    },
    { name: 'pairs', unit: '{pair}' },
  ],
  citations: [
    {
      source: 'theil-sen',
      locator: 'median of pairwise slopes',
      mark: 'memory',
      remark: 'Checked by running two independent programs on the same data.',
    },
  ],
  calculate: (given) => senSlope(given.values, given.times),
  example: { values: [2, 3, 2, 2, 4, 3, 3, 5, 4, 4, 5, 6, 5, 6] },
});
