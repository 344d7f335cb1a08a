/**
 * Three to five activities chosen by the patient, each 0 (unable) to 10 (as before); the score is the mean.
 *
 * The detectable change, 2 points for the mean and 3 for one activity at 90 % confidence, is from memory.
 * Means are comparable only while the activities stay the same, in the same order.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { worked } from '#core/calculations/working.ts';
import { answer, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import type { Day } from '#core/time/day.ts';
import { judgeChange, judgedChangeFields } from '../change/change-beyond-error.ts';
import { coursesByName } from '../course/drawn.ts';
import {
  amount,
  changeWords,
  type Judgement,
  nothingToCompare,
  type OutcomeLine,
  withoutNorm,
} from '../course/judgement.ts';
import { type AtDistance, distanceOfAll } from '../measurements/at-distance.ts';
import { whole, word } from './fields.ts';
import { measure } from './measure.ts';

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

type Scores = ReadonlyMap<string, number>;

interface Rated extends AtDistance {
  readonly day: Day;
  readonly activity: string;
  readonly score: number;
  /** Rated on the patient's own phone. */
  readonly answeredAtHome?: boolean;
}

type RatedOnDay = ReadonlyMap<string, Rated>;

const activitiesByDay = (rows: readonly Rated[]): readonly (readonly [Day, RatedOnDay])[] => {
  const days = new Map<Day, Map<string, Rated>>();
  for (const row of rows) {
    const day = days.get(row.day) ?? new Map<string, Rated>();
    day.set(row.activity, row);
    days.set(row.day, day);
  }
  return [...days].sort(([a], [b]) => (a < b ? -1 : 1));
};

const scoresOf = (rated: RatedOnDay): Scores =>
  new Map([...rated].map(([activity, { score }]) => [activity, score]));

const ratedInWords = ({ activity, score, answeredAtHome }: Rated): string =>
  `${activity} ${score}${answeredAtHome ? ' (answered at home)' : ''}`;

const [fewest, most] = [3, 5];
const isWhole = (scores: Scores): boolean => scores.size >= fewest && scores.size <= most;

const meanOf = (scores: Scores): Judgement => {
  if (!isWhole(scores))
    return withoutNorm(
      `${fewest} to ${most} activities rated on one day give a mean; there ${scores.size === 1 ? 'is' : 'are'} ${scores.size}.`,
    );
  const { working, outcome } = worked(patientChosenActivitiesRow, { scores: [...scores.values()] });
  if (!outcome.ok) return withoutNorm('No mean.');
  return {
    sentence: `Mean ${amount(outcome.result.mean)} of 10. There is no norm; the activities are the patient’s own.`,
    workings: [working],
  };
};

const activityChange = (first: Scores, last: Scores): OutcomeLine['change'] => {
  const names = [...first.keys()].filter((name) => last.has(name));
  if (names.length < fewest || names.length > most || !isWhole(first) || names.length !== first.size)
    return {
      sentence: 'Not compared: the same three to five activities must be rated both times.',
      workings: [],
      verdict: 'not-judged',
    };
  const scores = (of: Scores) => names.map((name) => of.get(name)!);
  const { working, outcome } = worked(patientChosenActivitiesChangeRow, {
    before: scores(first),
    after: scores(last),
  });
  if (!outcome.ok) return nothingToCompare;
  const { single, ...mean } = outcome.result;
  const each = names.map((name, place) => `${name}: ${changeWords(single[place]!, ' points')}`);
  return {
    sentence: `Mean ${changeWords(mean, ' points')} The errors, 2 points for the mean and 3 for one activity, at 90 %, are from memory.`,
    parts: each,
    workings: [working],
    verdict: mean.direction,
  };
};

const lines = (rows: readonly Rated[]): readonly OutcomeLine[] => {
  const days = activitiesByDay(rows);
  const [first, last] = [days[0], days.at(-1)];
  if (!first || !last) return [];
  return [
    {
      key: 'patient-chosen-activity',
      kind: 'patient-chosen-activity',
      title: 'Activities chosen by the patient',
      readings: days.map(([day, rated]) => ({
        day,
        text: [...rated.values()].map(ratedInWords).join(', '),
        ...distanceOfAll([...rated.values()]),
      })),
      drawn: {
        // The error of one activity holds for each.
        courses: coursesByName(
          rows.map(({ activity, day, score }) => ({ name: activity, day, figure: score })),
        ),
        unit: 'points',
        error: minimalDetectable.single,
        cut: null,
        better: 'higher',
      },
      norm: meanOf(scoresOf(last[1])),
      change: days.length < 2 ? nothingToCompare : activityChange(scoresOf(first[1]), scoresOf(last[1])),
    },
  ];
};

export const patientChosenActivity = measure({
  kind: 'patient-chosen-activity',
  title: 'Activity chosen by the patient',
  fields: [
    word('activity', 'Activity, in the patient’s words'),
    whole('score', '{score}', 0, 10, '0 unable … 10 as before'),
  ],
  sameBy: ['activity'],
  subject: (row) => row.activity,
  figure: (row) => row.score,
  inWords: (row) => `${row.score} of 10`,
  course: { area: 'patient', lines },
  calculations: [patientChosenActivitiesRow, patientChosenActivitiesChangeRow],
});
