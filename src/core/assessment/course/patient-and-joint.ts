/** Activities the patient chose, effusion of the knee and counts of sore joints over the course of care. */
import { worked } from '#core/calculations/working.ts';
import type { EffusionRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import { kneeEffusionChangeRow } from '../change/knee-effusion-change.ts';
import {
  patientChosenActivitiesChangeRow,
  patientChosenActivitiesRow,
} from '../change/patient-chosen-activities.ts';
import { cdaiRow } from '../disease-activity/cdai.ts';
import {
  amount,
  changeWords,
  type Judgement,
  nothingToCompare,
  type OutcomeLine,
  unjudged,
  withoutNorm,
} from './judgement.ts';
import { groupsOf, type Measured } from './measured.ts';

type Scores = ReadonlyMap<string, number>;

const activitiesByDay = (rows: readonly Measured[]): readonly (readonly [Day, Scores])[] => {
  const days = new Map<Day, Map<string, number>>();
  for (const row of rows) {
    if (row.kind !== 'patient-chosen-activity') continue;
    const day = days.get(row.day) ?? new Map<string, number>();
    day.set(row.activity, row.score);
    days.set(row.day, day);
  }
  return [...days].sort(([a], [b]) => (a < b ? -1 : 1));
};

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

const activityLines = (rows: readonly Measured[]): readonly OutcomeLine[] => {
  const days = activitiesByDay(rows);
  const [first, last] = [days[0], days.at(-1)];
  if (!first || !last) return [];
  return [
    {
      key: 'patient-chosen-activity',
      kind: 'patient-chosen-activity',
      title: 'Activities chosen by the patient',
      readings: days.map(([day, scores]) => ({
        day,
        text: [...scores].map(([activity, score]) => `${activity} ${score}`).join(', '),
      })),
      norm: meanOf(last[1]),
      change: days.length < 2 ? nothingToCompare : activityChange(first[1], last[1]),
    },
  ];
};

const jointCountLines = (rows: readonly Measured[]): readonly OutcomeLine[] =>
  groupsOf(rows, 'joint-counts', () => '').map(({ rows: own }) => {
    const scored = own.map(({ day, tender, swollen, patientGlobal, clinicianGlobal }) => ({
      day,
      ...worked(cdaiRow, { tender, swollen, patientGlobal, clinicianGlobal }),
    }));
    const results = scored.flatMap(({ outcome }) => (outcome.ok ? [outcome.result] : []));
    const [first, last] = [results[0]!, results.at(-1)!];
    return {
      key: 'joint-counts',
      kind: 'joint-counts',
      title: 'Clinical disease activity index',
      readings: scored.map(({ day, outcome }) => ({
        day,
        text: outcome.ok ? `${amount(outcome.result.score)}, ${outcome.result.band}` : 'not worked out',
      })),
      norm: {
        sentence: `${amount(last.score)} is ${last.band}: remission up to 2.8, low to 10, moderate to 22. For rheumatoid arthritis.`,
        workings: [scored.at(-1)!.working],
      },
      change:
        results.length < 2
          ? nothingToCompare
          : unjudged(last.score - first.score, '', 'No error of measuring this index is on file.'),
    };
  });

const effusionChange = (own: readonly EffusionRecord[]): OutcomeLine['change'] => {
  if (own.length < 2) return nothingToCompare;
  const { working, outcome } = worked(kneeEffusionChangeRow, {
    earlier: own[0]!.grade,
    later: own.at(-1)!.grade,
  });
  if (!outcome.ok) return nothingToCompare;
  const { grades, beyondRaterDisagreement } = outcome.result;
  const verdict = !beyondRaterDisagreement ? 'within-error' : grades < 0 ? 'better' : 'worse';
  const by = Math.abs(grades) === 1 ? '1 grade' : `${Math.abs(grades)} grades`;
  return {
    sentence: `${own[0]!.grade} to ${own.at(-1)!.grade}, ${by}. ${beyondRaterDisagreement ? 'More than raters usually differ by.' : 'One grade is what raters differ by: not called a change.'}`,
    workings: [working],
    verdict,
  };
};

const effusionLines = (effusions: readonly EffusionRecord[]): readonly OutcomeLine[] =>
  [...new Set(effusions.map((row) => row.joint))].map((joint) => {
    const own = effusions.filter((row) => row.joint === joint);
    return {
      key: `effusion ${joint}`,
      kind: 'effusion',
      title: `Effusion, ${joint.replace('-', ' ')}`,
      readings: own.map(({ day, grade }) => ({ day, text: grade })),
      norm: withoutNorm('Grades zero, trace, 1+, 2+, 3+; act on the grade itself.'),
      change: effusionChange(own),
    };
  });

export const patientLines = (
  rows: readonly Measured[],
  effusions: readonly EffusionRecord[],
): readonly OutcomeLine[] => [...activityLines(rows), ...jointCountLines(rows), ...effusionLines(effusions)];
