/**
 * Three ratings of one joint at a visit, 0 to 10 each: pain, difficulty with everyday things, and how the person
 * is overall. Told together with the responder of two societies, which is from memory.
 */
import { worked } from '#core/calculations/working.ts';
import { type Joint, joints } from '#core/exercises/joints.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { whoseError, withoutError } from '../../change/against-error.ts';
import {
  changeBeforeArthroplastyRow,
  errorBeforeArthroplasty,
} from '../../change/change-before-arthroplasty.ts';
import { awaitedJoint, type ErrorGroup } from '../../change/error-group.ts';
import { painRatingChangeRow, painRatingError } from '../../change/pain-rating-change.ts';
import { responderRow } from '../../change/responder.ts';
import { changeWords, nothingToCompare, type OutcomeLine, withoutNorm } from '../../course/judgement.ts';
import type { Person } from '../../course/measured.ts';
import { type AtDistance, distanceOf } from '../../measurements/at-distance.ts';
import { whole } from '../fields.ts';
import { measure } from '../measure.ts';

interface Rated extends AtDistance {
  readonly day: Day;
  readonly joint: Joint;
  readonly pain: number;
  /** null = not asked. */
  readonly difficulty: number | null;
  readonly patientGlobal: number;
}

const painError = (group: ErrorGroup | null, earlier: number): number | null => {
  const joint = awaitedJoint(group);
  if (joint) return errorBeforeArthroplasty('pain-rating', joint, earlier);
  return group === 'knee-osteoarthritis-mild' ? painRatingError('knee-osteoarthritis') : null;
};

const painChange = (first: Rated, last: Rated, group: ErrorGroup | null): OutcomeLine['change'] => {
  const [before, after] = [first.pain, last.pain];
  const joint = awaitedJoint(group);
  const judged = joint
    ? worked(changeBeforeArthroplastyRow, { test: 'pain-rating', joint, before, after })
    : worked(painRatingChangeRow, { group: 'knee-osteoarthritis', before, after });
  const isKnown = joint !== null || group === 'knee-osteoarthritis-mild';
  if (!isKnown || group === null || !judged.outcome.ok) return withoutError(after - before, ' points', group);
  const { outcome, working } = judged;
  return {
    sentence: `${changeWords(outcome.result, ' points')} ${whoseError(group, joint ? 'Naylor 2014' : 'Alghadir 2018')}`,
    workings: [working],
    verdict: outcome.result.direction,
    errorGroup: group,
  };
};

const scaled = (value: number): number => value * 10;

const responderWords = {
  yes: 'Meets the responder criteria of OMERACT and OARSI (from memory; made for trials).',
  no: 'Does not meet the responder criteria of OMERACT and OARSI (from memory; made for trials).',
  'not-known':
    'Whether the responder criteria of OMERACT and OARSI are met is not known: difficulty was not rated both times.',
} as const;

const responder = (first: Rated, last: Rated) => {
  const hasDifficulty = first.difficulty !== null && last.difficulty !== null;
  const { working, outcome } = worked(responderRow, {
    painBefore: scaled(first.pain),
    painAfter: scaled(last.pain),
    difficultyBefore: hasDifficulty ? scaled(first.difficulty) : null,
    difficultyAfter: hasDifficulty ? scaled(last.difficulty) : null,
    globalBefore: scaled(first.patientGlobal),
    globalAfter: scaled(last.patientGlobal),
  });
  return outcome.ok ? { working, words: responderWords[outcome.result.responder] } : null;
};

const changeOf = (first: Rated, last: Rated, group: ErrorGroup | null): OutcomeLine['change'] => {
  const pain = painChange(first, last, group);
  const said = responder(first, last);
  return {
    ...pain,
    sentence: `Pain: ${pain.sentence}`,
    workings: [...pain.workings, ...(said ? [said.working] : [])],
    ...(said ? { parts: [said.words] } : {}),
  };
};

const inWords = ({ pain, difficulty, patientGlobal }: Rated): string =>
  `pain ${pain}, difficulty ${difficulty ?? 'not asked'}, overall ${patientGlobal}`;

const lineOf = (joint: Joint, own: readonly Rated[], { errorGroup }: Person): OutcomeLine => {
  const [first, last] = [own[0]!, own.at(-1)!];
  return {
    key: `pain-function-global ${joint}`,
    kind: 'pain-function-global',
    title: `Ratings: ${jointInWords(joint)}`,
    readings: own.map((row) => ({ day: row.day, text: inWords(row), ...distanceOf(row) })),
    drawn: {
      // The error is that of pain, so pain is what is drawn.
      courses: [{ name: null, points: own.map(({ day, pain }) => ({ day, figure: pain })) }],
      unit: 'points',
      error: painError(errorGroup, first.pain),
      cut: null,
      better: 'lower',
    },
    norm: withoutNorm('Each from 0 to 10, 10 the worst. The picture shows pain.'),
    change: own.length < 2 ? nothingToCompare : changeOf(first, last, errorGroup),
  };
};

const lines = (rows: readonly Rated[], person: Person): readonly OutcomeLine[] =>
  [...new Set(rows.map(({ joint }) => joint))].map((joint) =>
    lineOf(
      joint,
      rows.filter((row) => row.joint === joint),
      person,
    ),
  );

export const painFunctionGlobal = measure({
  kind: 'pain-function-global',
  title: 'Ratings of a joint',
  isChosen: true,
  fields: [
    { name: 'joint', kind: 'enum', values: joints, about: 'Joint' },
    whole('pain', '{score}', 0, 10, 'Pain: 0 none … 10 worst'),
    {
      ...whole('difficulty', '{score}', 0, 10, 'Difficulty with everyday things: 0 none … 10 unable'),
      nullable: true,
    },
    whole('patientGlobal', '{score}', 0, 10, 'Overall: 0 very well … 10 very poorly'),
  ],
  hints: {
    pain: 'On average over the last week.',
    difficulty: 'Leave empty where it was not asked.',
  },
  sameBy: ['joint'],
  subject: (row) => jointInWords(row.joint),
  figure: (row) => row.pain,
  inWords,
  course: { area: 'patient', lines },
});
