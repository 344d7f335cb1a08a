/**
 * Change of a 0 to 10 pain rating: beyond error, and important to patients.
 *
 * Error differs by group: 1.33 in knee osteoarthritis, 2.83 by arithmetic from the standard error in low back
 * pain, whose authors print "2 points" because they left out the square root of two. Important changes come
 * from other studies and are given as they stand; they do not make a change within error real.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { exceeds, judgeChange, judgedChangeFields } from './change-beyond-error.ts';
import { minimalDetectableChange } from './minimal-detectable-change.ts';

const standardError = { 'knee-osteoarthritis': 0.48, 'low-back-pain': 1.02 } as const;

export const painRatingError = (group: keyof typeof standardError): number =>
  minimalDetectableChange(standardError[group]).mdc95;

/** A fall counts from the figure on, in points or in percent of the earlier rating. */
const important = {
  'slightly-better': { points: 1, percent: 15 },
  'much-better': { points: 2, percent: 33 },
  important: { points: 2, percent: 30 },
} as const;

const reached = (fall: number, before: number, row: { points: number; percent: number }): boolean =>
  !exceeds(row.points, fall) || (before > 0 && !exceeds(row.percent, (fall / before) * 100));

export const painRatingChangeRow = calculation({
  id: 'pain-rating-change',
  title: 'Change of a pain rating',
  area: 'outcomes',
  input: [
    { name: 'group', kind: 'enum', values: ['knee-osteoarthritis', 'low-back-pain'] },
    { name: 'before', kind: 'number', unit: '{score}', min: 0, max: 10 },
    { name: 'after', kind: 'number', unit: '{score}', min: 0, max: 10 },
  ],
  result: [
    ...judgedChangeFields('{score}'),
    { name: 'slightlyBetter', unit: '' },
    { name: 'muchBetter', unit: '' },
    { name: 'importantFall', unit: '' },
  ],
  citations: [
    { source: 'alghadir-2018', locator: 'standard error 0.48, detectable change 1.33', mark: 'seen' },
    {
      source: 'childs-2005',
      locator: 'standard error 1.02',
      mark: 'seen',
      remark: 'The printed detectable change of 2 points is 1.96 times the error, without the root of two.',
    },
    { source: 'farrar-2001', locator: 'about 2 points or 30 %', mark: 'seen' },
    {
      source: 'salaffi-2004',
      locator: 'slightly better 1 point or 15 %, much better 2 points or 33 %',
      mark: 'seen',
    },
  ],
  calculate: (input) => {
    const error = painRatingError(input.group);
    const fall = input.before - input.after;
    return answer({
      ...judgeChange(input.before, input.after, error, 'lower'),
      slightlyBetter: reached(fall, input.before, important['slightly-better']),
      muchBetter: reached(fall, input.before, important['much-better']),
      importantFall: reached(fall, input.before, important.important),
    });
  },
  example: { group: 'knee-osteoarthritis', before: 6, after: 4 },
});
