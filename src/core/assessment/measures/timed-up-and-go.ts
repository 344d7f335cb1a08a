/**
 * Timed up and go: 12 seconds or more as a fall-risk cut, 20 or more as severely low performance.
 *
 * The 12-second cut is from memory; published cuts range widely. A time under it does not rule out falls. A
 * change is held against the error of the person’s own group: in knee osteoarthritis of radiographic grade 1 to
 * 3 it is 1.10 s with the same rater and 1.14 s with another, before an arthroplasty over a third of the time.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { worked } from '#core/calculations/working.ts';
import { answer } from '#core/outcome.ts';
import { figure } from '#core/review/plain-words.ts';
import { whoseError, withoutError } from '../change/against-error.ts';
import {
  type AwaitedJoint,
  changeBeforeArthroplastyRow,
  errorBeforeArthroplasty,
  percentBeforeArthroplasty,
} from '../change/change-before-arthroplasty.ts';
import { judgeChange, judgedChangeFields } from '../change/change-beyond-error.ts';
import { awaitedJoint, type ErrorGroup } from '../change/error-group.ts';
import type { HowDrawn } from '../course/drawn.ts';
import {
  changeWords,
  type Judgement,
  nothingToCompare,
  type OutcomeLine,
  withoutNorm,
} from '../course/judgement.ts';
import type { Measured, Person } from '../course/measured.ts';
import { number, usually } from './fields.ts';
import { measure } from './measure.ts';

const fallRiskFromSeconds = 12;
const severeFromSeconds = 20;
const minimalDetectableSeconds = { same: 1.1, other: 1.14 } as const;

export const timedUpAndGoRow = calculation({
  id: 'timed-up-and-go',
  title: 'Timed up and go',
  area: 'outcomes',
  input: [{ name: 'seconds', kind: 'number', unit: 's', min: 2, max: 300 }],
  result: units({ fallRisk: '', severelyLow: '' }),
  citations: [
    { source: 'fall-toolkit', locator: '12 seconds', mark: 'memory' },
    { source: 'ewgsop2-2019', locator: 'severity: 20 seconds', mark: 'seen' },
  ],
  calculate: (input) =>
    answer(
      { fallRisk: input.seconds >= fallRiskFromSeconds, severelyLow: input.seconds >= severeFromSeconds },
      [
        {
          code: 'from-memory',
          text: 'The cut of 12 seconds is from memory. A shorter time does not rule out falls.',
        },
      ],
    ),
  example: { seconds: 12.4 },
});

export const timedUpAndGoChangeRow = calculation({
  id: 'timed-up-and-go-change',
  title: 'Change on the timed up and go',
  area: 'outcomes',
  input: [
    { name: 'beforeSeconds', kind: 'number', unit: 's', min: 2, max: 300 },
    { name: 'afterSeconds', kind: 'number', unit: 's', min: 2, max: 300 },
    { name: 'rater', kind: 'enum', values: ['same', 'other'] },
  ],
  result: judgedChangeFields('s'),
  citations: [
    { source: 'alghadir-2015', locator: 'minimal detectable change within and between raters', mark: 'seen' },
  ],
  calculate: (input) =>
    answer(
      judgeChange(input.beforeSeconds, input.afterSeconds, minimalDetectableSeconds[input.rater], 'lower'),
    ),
  example: { beforeSeconds: 12.6, afterSeconds: 11.2, rater: 'same' },
});

type Walk = Measured<{ readonly seconds: number }>;

const norm = ({ seconds }: Walk): Judgement => {
  const { working, outcome } = worked(timedUpAndGoRow, { seconds });
  if (!outcome.ok) return withoutNorm('No cut-off holds for this time.');
  const { fallRisk, severelyLow } = outcome.result;
  const place = severelyLow
    ? 'severely low performance'
    : fallRisk
      ? 'at the fall-risk cut or over it'
      : 'under the fall-risk cut';
  return {
    sentence: `12 s or more is a fall-risk cut (from memory), 20 s or more severely low: ${figure(seconds)} s is ${place}. A shorter time does not rule out falls.`,
    workings: [working],
  };
};

const raterOf = (first: Walk, last: Walk) => (first.recordedBy === last.recordedBy ? 'same' : 'other');

const errorOf = (first: Walk, last: Walk, group: ErrorGroup | null): number | null => {
  const joint = awaitedJoint(group);
  if (joint) return errorBeforeArthroplasty('timed-up-and-go', joint, first.seconds);
  return group === 'knee-osteoarthritis-mild' ? minimalDetectableSeconds[raterOf(first, last)] : null;
};

const drawn = (first: Walk, last: Walk, { errorGroup }: Person): HowDrawn => ({
  unit: 's',
  error: errorOf(first, last, errorGroup),
  cut: { at: fallRiskFromSeconds, words: `fall-risk cut: ${fallRiskFromSeconds} s or more` },
  better: 'lower',
});

const changeInMild = (first: Walk, last: Walk): OutcomeLine['change'] => {
  const rater = raterOf(first, last);
  const { working, outcome } = worked(timedUpAndGoChangeRow, {
    beforeSeconds: first.seconds,
    afterSeconds: last.seconds,
    rater,
  });
  if (!outcome.ok) return nothingToCompare;
  const by = rater === 'same' ? 'Entered by the same clinician.' : 'Entered by two clinicians.';
  const whose = whoseError('knee-osteoarthritis-mild', 'Alghadir 2015');
  return {
    sentence: `${changeWords(outcome.result, ' s')} ${by} ${whose}`,
    workings: [working],
    verdict: outcome.result.direction,
    errorGroup: 'knee-osteoarthritis-mild',
  };
};

const changeAwaiting = (
  first: Walk,
  last: Walk,
  joint: AwaitedJoint,
  group: ErrorGroup,
): OutcomeLine['change'] => {
  const [before, after] = [first.seconds, last.seconds];
  const { working, outcome } = worked(changeBeforeArthroplastyRow, {
    test: 'timed-up-and-go',
    joint,
    before,
    after,
  });
  if (!outcome.ok) return nothingToCompare;
  const whose = whoseError(group, `Naylor 2014, ${percentBeforeArthroplasty[joint]} % of the first time`);
  return {
    sentence: `${changeWords(outcome.result, ' s')} ${whose} In early knee osteoarthritis it is ${minimalDetectableSeconds.same} s.`,
    workings: [working],
    verdict: outcome.result.direction,
    errorGroup: group,
  };
};

const change = (first: Walk, last: Walk, { errorGroup: group }: Person): OutcomeLine['change'] => {
  const joint = awaitedJoint(group);
  if (group && joint) return changeAwaiting(first, last, joint, group);
  return group === 'knee-osteoarthritis-mild'
    ? changeInMild(first, last)
    : withoutError(last.seconds - first.seconds, ' s', group);
};

export const timedUpAndGo = measure({
  kind: 'timed-up-and-go',
  title: 'Timed up and go',
  fields: [number('seconds', 's', 2, 300, 'Time')],
  usual: [usually('seconds', 4, 60, 's')],
  figure: (row) => row.seconds,
  farFromLast: { percent: 60, figures: (row) => [{ value: row.seconds, unit: 's' }] },
  inWords: (row) => `${figure(row.seconds)} s`,
  course: {
    area: 'function',
    norm,
    change,
    drawnAt: (row) => row.seconds,
    drawn,
  },
  calculations: [timedUpAndGoRow, timedUpAndGoChangeRow],
});
