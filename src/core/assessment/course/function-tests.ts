/** Chair stand, timed up and go, grip: cut-offs by age and sex where there are any, and change beyond error. */
import { worked } from '#core/calculations/working.ts';
import { ageYears } from '#core/time/day.ts';
import { chairStandChangeRow } from '../function-tests/chair-stand-change.ts';
import { chairStandNormRow } from '../function-tests/chair-stand-norm.ts';
import { gripStrengthRow } from '../function-tests/grip-strength.ts';
import { timedUpAndGoRow } from '../function-tests/timed-up-and-go.ts';
import { timedUpAndGoChangeRow } from '../function-tests/timed-up-and-go-change.ts';
import {
  amount,
  changeWords,
  type Judgement,
  nothingToCompare,
  type OutcomeLine,
  unjudged,
  withoutNorm,
} from './judgement.ts';
import { groupsOf, type Measured, type MeasuredOf, type Person } from './measured.ts';

const sexNeeded = 'No cut-off: the sex used in formulas is not in the care profile.';
const people = { female: 'a woman', male: 'a man' } as const;

const chairNorm = (row: MeasuredOf<'chair-stand-30s'>, person: Person): Judgement => {
  if (person.sex === null) return withoutNorm(sexNeeded);
  const age = ageYears(person.birthDay, row.day);
  const { working, outcome } = worked(chairStandNormRow, {
    sex: person.sex,
    ageYears: age,
    stands: row.stands,
  });
  if (!outcome.ok) return withoutNorm(`No norm: ${outcome.refused.map((one) => one.reason).join(' ')}`);
  const { threshold, belowAverage } = outcome.result;
  return {
    sentence: `Under ${threshold} stands is below average for ${people[person.sex]} of ${age}: ${row.stands} is ${belowAverage ? 'below average' : 'not below average'}. A fall-risk cut, not a goal.`,
    workings: [working],
  };
};

const chairChange = (rows: readonly MeasuredOf<'chair-stand-30s'>[]): OutcomeLine['change'] => {
  const [first, last] = [rows[0]!, rows.at(-1)!];
  if (rows.length < 2) return nothingToCompare;
  const { working, outcome } = worked(chairStandChangeRow, { before: first.stands, after: last.stands });
  if (!outcome.ok) return nothingToCompare;
  return {
    sentence: changeWords(outcome.result, ' stands'),
    workings: [working],
    verdict: outcome.result.direction,
  };
};

const walkNorm = (row: MeasuredOf<'timed-up-and-go'>): Judgement => {
  const { working, outcome } = worked(timedUpAndGoRow, { seconds: row.seconds });
  if (!outcome.ok) return withoutNorm('No cut-off holds for this time.');
  const { fallRisk, severelyLow } = outcome.result;
  const place = severelyLow
    ? 'severely low performance'
    : fallRisk
      ? 'at the fall-risk cut or over it'
      : 'under the fall-risk cut';
  return {
    sentence: `12 s or more is a fall-risk cut (from memory), 20 s or more severely low: ${amount(row.seconds)} s is ${place}. A shorter time does not rule out falls.`,
    workings: [working],
  };
};

const walkChange = (rows: readonly MeasuredOf<'timed-up-and-go'>[]): OutcomeLine['change'] => {
  const [first, last] = [rows[0]!, rows.at(-1)!];
  if (rows.length < 2) return nothingToCompare;
  const rater = first.recordedBy === last.recordedBy ? 'same' : 'other';
  const { working, outcome } = worked(timedUpAndGoChangeRow, {
    beforeSeconds: first.seconds,
    afterSeconds: last.seconds,
    rater,
  });
  if (!outcome.ok) return nothingToCompare;
  const by = rater === 'same' ? 'Entered by the same clinician.' : 'Entered by two clinicians.';
  return {
    sentence: `${changeWords(outcome.result, ' s')} ${by}`,
    workings: [working],
    verdict: outcome.result.direction,
  };
};

const gripNorm = (row: MeasuredOf<'grip'>, { sex }: Person): Judgement => {
  if (sex === null) return withoutNorm(sexNeeded);
  const { working, outcome } = worked(gripStrengthRow, { sex, forceKg: row.forceKg });
  if (!outcome.ok) return withoutNorm('No cut-off holds for this force.');
  const { thresholdKg, low } = outcome.result;
  return {
    sentence: `Under ${thresholdKg} kg is low for ${people[sex]}: ${amount(row.forceKg)} kg is ${low ? 'low' : 'not low'}. A painful or deformed hand lowers grip by itself.`,
    workings: [working],
  };
};

export const functionLines = (rows: readonly Measured[], person: Person): readonly OutcomeLine[] => [
  ...groupsOf(rows, 'chair-stand-30s', () => '').map((group) => ({
    key: 'chair-stand-30s',
    kind: 'chair-stand-30s',
    title: '30-second chair stand',
    readings: group.rows.map(({ day, stands }) => ({ day, text: `${stands} stands` })),
    norm: chairNorm(group.rows.at(-1)!, person),
    change: chairChange(group.rows),
  })),
  ...groupsOf(rows, 'timed-up-and-go', () => '').map((group) => ({
    key: 'timed-up-and-go',
    kind: 'timed-up-and-go',
    title: 'Timed up and go',
    readings: group.rows.map(({ day, seconds }) => ({ day, text: `${amount(seconds)} s` })),
    norm: walkNorm(group.rows.at(-1)!),
    change: walkChange(group.rows),
  })),
  ...groupsOf(rows, 'grip', (row) => row.side).map(({ subject, rows: own }) => ({
    key: `grip ${subject}`,
    kind: 'grip',
    title: `Grip strength, ${subject}`,
    readings: own.map(({ day, forceKg }) => ({ day, text: `${amount(forceKg)} kg` })),
    norm: gripNorm(own.at(-1)!, person),
    change:
      own.length < 2
        ? nothingToCompare
        : unjudged(own.at(-1)!.forceKg - own[0]!.forceKg, ' kg', 'No error of measuring grip is on file.'),
  })),
];
