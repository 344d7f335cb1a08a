/**
 * A change in somebody who awaits a knee or hip arthroplasty, against the error found in such people.
 *
 * 75 people awaiting a knee and 61 awaiting a hip were tested twice. The error of the timed up and go is a share
 * of the time, here of the earlier one; those of the six-minute walk and of pain are plain. Pain was marked on a
 * line of 10 cm; that a rating from 0 to 10 errs alike is assumed.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { judgeChange, judgedChangeFields } from './change-beyond-error.ts';

const testsBeforeArthroplasty = ['timed-up-and-go', 'six-minute-walk', 'pain-rating'] as const;
type Test = (typeof testsBeforeArthroplasty)[number];
export type AwaitedJoint = 'knee' | 'hip';

const errors = {
  'timed-up-and-go': { better: 'lower', percentOfEarlier: { knee: 36.7, hip: 44.6 } },
  'six-minute-walk': { better: 'higher', metres: { knee: 79, hip: 81.5 } },
  'pain-rating': { better: 'lower', points: { knee: 2.8, hip: 3.3 } },
} as const;

export const percentBeforeArthroplasty = errors['timed-up-and-go'].percentOfEarlier;

/** In the unit of the test. */
export const errorBeforeArthroplasty = (test: Test, joint: AwaitedJoint, earlier: number): number => {
  if (test === 'timed-up-and-go') return (earlier * percentBeforeArthroplasty[joint]) / 100;
  return test === 'six-minute-walk' ? errors[test].metres[joint] : errors[test].points[joint];
};

export const changeBeforeArthroplastyRow = calculation({
  id: 'change-before-arthroplasty',
  title: 'Change before a knee or hip arthroplasty',
  area: 'outcomes',
  input: [
    { name: 'test', kind: 'enum', values: testsBeforeArthroplasty },
    { name: 'joint', kind: 'enum', values: ['knee', 'hip'] },
    { name: 'before', kind: 'number', unit: '1', min: 0, max: 1000, about: 'Seconds, metres or points.' },
    { name: 'after', kind: 'number', unit: '1', min: 0, max: 1000 },
  ],
  result: judgedChangeFields('1'),
  citations: [
    {
      source: 'naylor-2014',
      locator: 'abstract: change for 95 % of 75 people awaiting a knee and 61 awaiting a hip',
      mark: 'seen',
      remark: 'Printed as ± 36.7 and 44.6 % for the timed up and go; here of the earlier time.',
    },
  ],
  calculate: ({ test, joint, before, after }) =>
    answer(judgeChange(before, after, errorBeforeArthroplasty(test, joint, before), errors[test].better)),
  example: { test: 'timed-up-and-go', joint: 'knee', before: 15, after: 11 },
});
