/**
 * 30-second chair stand against the below-average cut for age and sex, and its change against the error.
 *
 * A fall-risk cut for people of 60 to 94 years, not a goal. The score is 0 when the arms are used, and a
 * stand more than half-way up at 30 seconds counts. Outside the table there is no norm, and none is invented.
 * The error, 2.5 stands for one person, is from 93 people with early knee osteoarthritis. A second trial gains
 * 0.5 to 0.8 stands by practice alone, so a first trial is discarded before comparing.
 */
import { calculation } from '#core/calculations/calculation.ts';
import type { Field, InputOf } from '#core/calculations/describe.ts';
import { worked } from '#core/calculations/working.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';
import { ageYears } from '#core/time/day.ts';
import { whoseError, withoutError } from '../change/against-error.ts';
import { judgeChange, judgedChangeFields } from '../change/change-beyond-error.ts';
import { reliabilityWords } from '../change/test-reliability.ts';
import type { HowDrawn } from '../course/drawn.ts';
import {
  changeWords,
  type Judgement,
  nothingToCompare,
  type OutcomeLine,
  withoutNorm,
} from '../course/judgement.ts';
import { type Person, people, sexNeeded } from '../course/measured.ts';
import { usually, whole } from './fields.ts';
import { measure } from './measure.ts';

/** A score under the figure is below average. Ages are inclusive, in completed years. */
const chairStandTable = [
  { from: 60, to: 64, male: 14, female: 12 },
  { from: 65, to: 69, male: 12, female: 11 },
  { from: 70, to: 74, male: 12, female: 10 },
  { from: 75, to: 79, male: 11, female: 10 },
  { from: 80, to: 84, male: 10, female: 9 },
  { from: 85, to: 89, male: 8, female: 8 },
  { from: 90, to: 94, male: 7, female: 4 },
] as const;

const normInput = [
  { name: 'sex', kind: 'enum', values: ['female', 'male'] },
  { name: 'ageYears', kind: 'number', unit: 'a', min: 18, max: 120, about: 'Completed years count.' },
  { name: 'stands', kind: 'integer', unit: '{stand}', min: 0, max: 60 },
] as const satisfies readonly Field[];

export const chairStandNorm = (
  given: InputOf<typeof normInput>,
): Outcome<{ belowAverage: boolean; threshold: number }> => {
  const age = Math.floor(given.ageYears);
  const row = chairStandTable.find((band) => age >= band.from && age <= band.to);
  if (!row) {
    return refuse(
      'ageYears',
      'outside-validity',
      'The table covers ages 60 to 94; there is no norm outside it.',
    );
  }
  const threshold = row[given.sex];
  return answer({ belowAverage: given.stands < threshold, threshold });
};

const chairStandNormRow = calculation({
  id: 'chair-stand-norm',
  title: '30-second chair stand against the norm',
  area: 'outcomes',
  input: normInput,
  result: [
    { name: 'belowAverage', unit: '' },
    { name: 'threshold', unit: '{stand}', about: 'a score under this is below average' },
  ],
  citations: [
    {
      source: 'rikli-jones-1999',
      locator: 'below-average table, ages 60 to 94',
      mark: 'second-hand',
      remark: 'The same figures on two pages; the toolkit and the study themselves were not seen.',
    },
  ],
  calculate: chairStandNorm,
  example: { sex: 'male', ageYears: 72, stands: 11 },
});

const minimalDetectableStands = 2.5;

export const chairStandChangeRow = calculation({
  id: 'chair-stand-change',
  title: 'Change on the 30-second chair stand',
  area: 'outcomes',
  input: [
    { name: 'before', kind: 'integer', unit: '{stand}', min: 0, max: 60 },
    { name: 'after', kind: 'integer', unit: '{stand}', min: 0, max: 60 },
  ],
  result: judgedChangeFields('{stand}'),
  citations: [
    { source: 'gill-2022', locator: 'abstract: minimal detectable change of one person', mark: 'seen' },
  ],
  calculate: (input) =>
    answer(judgeChange(input.before, input.after, minimalDetectableStands, 'higher'), [
      {
        code: 'practice-effect',
        text: 'A second trial gains about half a stand by practice; discard a first trial.',
      },
    ]),
  example: { before: 10, after: 13 },
});

interface Stood {
  readonly day: string;
  readonly stands: number;
}

const norm = ({ day, stands }: Stood, { sex, birthDay }: Person): Judgement => {
  if (sex === null) return withoutNorm(sexNeeded);
  const age = ageYears(birthDay, day);
  const { working, outcome } = worked(chairStandNormRow, { sex, ageYears: age, stands });
  if (!outcome.ok) return withoutNorm(`No norm: ${outcome.refused.map((one) => one.reason).join(' ')}`);
  const { threshold, belowAverage } = outcome.result;
  return {
    sentence: `Under ${threshold} stands is below average for ${people[sex]} of ${age}: ${stands} is ${belowAverage ? 'below average' : 'not below average'}. A fall-risk cut, not a goal.`,
    workings: [working],
  };
};

/** The cut of the newest age holds for the picture. */
const drawn = (_first: Stood, { day, stands }: Stood, person: Person): HowDrawn => {
  const { sex, birthDay, errorGroup } = person;
  const told = sex === null ? null : chairStandNorm({ sex, ageYears: ageYears(birthDay, day), stands });
  const cut = told?.ok
    ? { at: told.result.threshold, words: `under ${told.result.threshold}: below average` }
    : null;
  const error = errorGroup === 'knee-osteoarthritis-mild' ? minimalDetectableStands : null;
  return { unit: 'stands', error, cut, better: 'higher' };
};

const change = (first: Stood, last: Stood, { errorGroup }: Person): OutcomeLine['change'] => {
  if (errorGroup !== 'knee-osteoarthritis-mild') {
    const more = errorGroup === 'knee-arthroplasty-awaited' ? reliabilityWords('chair-stand-30s') : '';
    return withoutError(last.stands - first.stands, ' stands', errorGroup, more);
  }
  const { working, outcome } = worked(chairStandChangeRow, { before: first.stands, after: last.stands });
  if (!outcome.ok) return nothingToCompare;
  return {
    sentence: `${changeWords(outcome.result, ' stands')} ${whoseError(errorGroup, 'Gill 2022')}`,
    workings: [working],
    verdict: outcome.result.direction,
    errorGroup,
  };
};

export const chairStand = measure({
  kind: 'chair-stand-30s',
  title: '30-second chair stand',
  fields: [whole('stands', '1', 0, 60, 'Stands')],
  usual: [usually('stands', 2, 30, '1')],
  figure: (row) => row.stands,
  farFromLast: { percent: 60, figures: (row) => [{ value: row.stands, unit: 'stands' }] },
  inWords: (row) => `${row.stands} stands`,
  course: { area: 'function', norm, change, drawnAt: (row) => row.stands, drawn },
  calculations: [chairStandNormRow, chairStandChangeRow],
});
