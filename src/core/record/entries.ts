/**
 * What a phone sends: one session, one morning, one two-hours answer. The descriptors are the only
 * schema of these; rules that cross fields are the functions beside them.
 */

import type { Field, InputOf } from '../calculations/describe.ts';
import { signFields } from '../danger/signs-asked.ts';
import { redFlags } from '../decision/facts/facts.ts';
import { joints } from '../exercises/joints.ts';
import type { Refusal } from '../outcome.ts';
import { isDay } from '../time/day.ts';
import { enteredAs, morningVias, newsKinds, otherJointAnswers } from './entry-words.ts';
import { mostFollowedJoints } from './followed-joints.ts';
import { limbChecksField, limbRefusals } from './limb-check-fields.ts';
import { answerFields, score, state } from './morning-questions.ts';
import { stopReasons } from './record.ts';

/**
 * Format number of the entries this release writes; every earlier one is taken. Format 2 lets the questions
 * asked after the work stand open, says per set whether the easier session was done, and carries what is
 * new since last time and who typed it. Format 3 says what was seen of fingers or toes after a cuff. Format 4
 * says which question about swelling was asked. Format 5 says in which form warning signs were asked for, what
 * was ticked and taken back, and whether a morning was answered as the one before. Format 6 says of a morning whether
 * another joint is worse, and holds up to six joints. Whatever an earlier format lacks is optional here.
 */
export const entryFormat = 6;

/** Of one set; more is a slip of typing. */
export const mostRepetitions = 500;

const instant = <const N extends string>(name: N) =>
  ({ name, kind: 'integer', unit: 'ms', min: 0, max: 4_102_444_800_000 }) as const;
const text = <const N extends string>(name: N, maxLength: number) =>
  ({ name, kind: 'text', minLength: 1, maxLength }) as const;

const envelope = [
  { name: 'format', kind: 'integer', unit: '1', min: 1, max: entryFormat },
  text('entryId', 64),
  text('day', 10),
  text('zone', 64),
  instant('sentAt'),
  { name: 'amends', kind: 'text', minLength: 1, maxLength: 64, optional: true },
  { name: 'enteredAs', kind: 'enum', values: enteredAs, optional: true },
  {
    name: 'redFlags',
    kind: 'list',
    nullable: true,
    maxItems: redFlags.length,
    of: { name: 'flag', kind: 'enum', values: redFlags },
  },
  { name: 'extraPainRelief', kind: 'flag', nullable: true },
  ...signFields,
] as const satisfies readonly Field[];

export const sessionEntryFields = [
  ...envelope,
  { name: 'kind', kind: 'enum', values: ['full', 'bad-day', 'test'] },
  instant('beganAt'),
  instant('endedAt'),
  { name: 'didExtra', kind: 'flag', nullable: true },
  {
    name: 'news',
    kind: 'list',
    nullable: true,
    optional: true,
    maxItems: 9,
    of: { name: 'news', kind: 'enum', values: newsKinds },
  },
  { name: 'otherJointWorse', kind: 'flag', nullable: true, optional: true },
  { name: 'stoppedByFlag', kind: 'flag' },
  limbChecksField,
  {
    name: 'sets',
    kind: 'list',
    maxItems: 60,
    of: {
      name: 'set',
      kind: 'record',
      fields: [
        text('prescriptionId', 64),
        text('itemId', 64),
        { name: 'set', kind: 'integer', unit: '1', min: 1, max: 30 },
        { name: 'repetitions', kind: 'integer', unit: '{rep}', min: 0, max: mostRepetitions, nullable: true },
        { name: 'loadKg', kind: 'number', unit: 'kg', min: 0, max: 500, nullable: true },
        { name: 'reserve', kind: 'integer', unit: '{rep}', min: 0, max: 10, nullable: true },
        { name: 'stopReason', kind: 'enum', values: stopReasons },
        { name: 'easier', kind: 'flag', optional: true },
      ],
    },
  },
  {
    name: 'joints',
    kind: 'list',
    maxItems: mostFollowedJoints,
    of: {
      name: 'joint',
      kind: 'record',
      fields: [
        { name: 'joint', kind: 'enum', values: joints },
        score('painBefore'),
        score('painDuring'),
        score('painAfter'),
        state('twoHoursState'),
        score('muscleBurn'),
        score('cuffDiscomfort'),
        { name: 'gaveWay', kind: 'flag', nullable: true },
      ],
    },
  },
] as const satisfies readonly Field[];

export const morningEntryFields = [
  ...envelope,
  instant('answeredAt'),
  { name: 'via', kind: 'enum', values: morningVias, optional: true },
  score('fatigue'),
  state('fatigueState'),
  { name: 'otherJoint', kind: 'enum', values: otherJointAnswers, optional: true },
  {
    name: 'joints',
    kind: 'list',
    maxItems: mostFollowedJoints,
    of: {
      name: 'joint',
      kind: 'record',
      fields: [{ name: 'joint', kind: 'enum', values: joints }, ...answerFields],
    },
  },
] as const satisfies readonly Field[];

export const twoHoursEntryFields = [
  ...envelope,
  text('sessionEntryId', 64),
  { name: 'joint', kind: 'enum', values: joints },
  score('pain'),
] as const satisfies readonly Field[];

export type SessionEntry = InputOf<typeof sessionEntryFields>;
export type MorningEntry = InputOf<typeof morningEntryFields>;
export type TwoHoursEntry = InputOf<typeof twoHoursEntryFields>;

const repeated = (values: readonly string[]): string | undefined =>
  values.find((value, index) => values.indexOf(value) !== index);

const envelopeConsistent = (entry: { day: string; joints?: readonly { joint: string }[] }): Refusal[] => {
  const refusals: Refusal[] = [];
  if (!isDay(entry.day)) {
    refusals.push({
      field: 'input.day',
      code: 'wrong-type',
      reason: 'Give a day that exists, between 1900 and 2199.',
    });
  }
  const twice = repeated((entry.joints ?? []).map((row) => row.joint));
  if (twice)
    refusals.push({
      field: 'input.joints',
      code: 'inconsistent',
      reason: `Answer for ${twice} once, not twice.`,
    });
  return refusals;
};

export const sessionEntryConsistent = (entry: SessionEntry): readonly Refusal[] => {
  const refusals = envelopeConsistent(entry);
  if (entry.endedAt < entry.beganAt) {
    refusals.push({
      field: 'input.endedAt',
      code: 'inconsistent',
      reason: 'A session ends after it begins; check both times.',
    });
  }
  const twice = repeated(entry.sets.map((row) => `${row.itemId} set ${row.set}`));
  if (twice)
    refusals.push({ field: 'input.sets', code: 'inconsistent', reason: `Log ${twice} once, not twice.` });
  return [...refusals, ...limbRefusals(entry.limbChecks ?? [])];
};

export const morningEntryConsistent = (entry: MorningEntry): readonly Refusal[] => envelopeConsistent(entry);
export const twoHoursEntryConsistent = (entry: TwoHoursEntry): readonly Refusal[] =>
  envelopeConsistent(entry);
