/**
 * Three to five activities chosen by the patient, each 0 (unable) to 10 (as before); the score is the mean.
 *
 * The detectable change, 2 points for the mean and 3 for one activity at 90 % confidence, is from memory.
 * Means are comparable only while the activities stay the same, in the same order.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { judgeChange, judgedChangeFields } from './change-beyond-error.ts';

const citations: readonly Citation[] = [
  { source: 'chatman-1997', locator: 'scale and reliability, 38 people with knee dysfunction', mark: 'seen' },
];
const changeCitations: readonly Citation[] = [
  ...citations,
  {
    source: 'stratford-1995',
    locator: 'detectable change at 90 %: 2 (mean), 3 (one activity)',
    mark: 'memory',
  },
];
const minimalDetectable = { mean: 2, single: 3 } as const;

const scores = <const N extends string>(name: N) =>
  ({
    name,
    kind: 'list',
    minItems: 3,
    maxItems: 5,
    of: { name: 'score', kind: 'number', unit: '{score}', min: 0, max: 10 },
  }) as const;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export const patientChosenActivitiesRow = calculation({
  id: 'patient-chosen-activities',
  title: 'Patient-chosen activities',
  area: 'outcomes',
  input: [scores('scores')],
  result: [{ name: 'mean', unit: '{score}' }],
  citations,
  calculate: (input) => answer({ mean: mean(input.scores) }),
  example: { scores: [4, 5, 3] },
});

export const patientChosenActivitiesChangeRow = calculation({
  id: 'patient-chosen-activities-change',
  title: 'Change on the patient-chosen activities',
  area: 'outcomes',
  input: [scores('before'), scores('after')],
  result: [
    ...judgedChangeFields('{score}'),
    { name: 'single', unit: '{score}', about: 'the same for each activity' },
  ],
  citations: changeCitations,
  calculate: (input) => {
    if (input.before.length !== input.after.length) {
      return refuse('after', 'inconsistent', 'Give the same activities in the same order, before and after.');
    }
    return answer(
      {
        ...judgeChange(mean(input.before), mean(input.after), minimalDetectable.mean, 'higher'),
        single: input.after.map((score, place) =>
          judgeChange(input.before[place] as number, score, minimalDetectable.single, 'higher'),
        ),
      },
      [{ code: 'from-memory', text: 'The detectable changes, 2 and 3 points at 90 %, are from memory.' }],
    );
  },
  example: { before: [4, 5, 3], after: [7, 7, 6] },
});
