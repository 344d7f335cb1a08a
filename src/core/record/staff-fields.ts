/** Descriptors of what clinicians enter beside measurements: profiles, baselines, answers to decisions. */

import { errorGroups } from '../assessment/change/error-group.ts';
import type { Field, InputOf } from '../calculations/describe.ts';
import { decisions } from '../decision/answers.ts';
import { joints, limbs, sides } from '../exercises/joints.ts';
import type { Refusal } from '../outcome.ts';
import { methods } from '../prescribing/methods.ts';
import { screeningAnswers } from '../screening/screening.ts';
import { type Day, daysBetween, isDay } from '../time/day.ts';
import { mostFollowedJoints } from './followed-joints.ts';
import { effusions } from './record.ts';

const text = <const N extends string>(name: N, maxLength: number, about?: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, about }) as const;

export const careProfileFields = [
  text('diagnosis', 200, 'Diagnosis'),
  { name: 'inflammatoryArthritis', kind: 'flag', about: 'Inflammatory arthritis' },
  {
    name: 'followedJoints',
    kind: 'list',
    minItems: 1,
    maxItems: mostFollowedJoints,
    about: 'Joints followed',
    of: { name: 'joint', kind: 'enum', values: joints },
  },
  {
    name: 'swellingNotAsked',
    kind: 'list',
    optional: true,
    maxItems: mostFollowedJoints,
    about: 'Joints not asked about swelling',
    of: { name: 'joint', kind: 'enum', values: joints },
  },
  { name: 'asksFatigue', kind: 'flag', optional: true, about: 'Ask each morning how tired the patient is' },
  {
    name: 'errorGroup',
    kind: 'enum',
    values: errorGroups,
    optional: true,
    nullable: true,
    about: 'Whose error of measuring holds',
  },
  {
    name: 'ownedLoadsKg',
    kind: 'list',
    maxItems: 60,
    about: 'Loads at home',
    of: { name: 'load', kind: 'number', unit: 'kg', min: 0.1, max: 200 },
  },
  {
    name: 'ownedEquipment',
    kind: 'list',
    optional: true,
    maxItems: 60,
    about: 'Equipment at home; if left out, an ordinary household',
    of: text('thing', 60),
  },
  {
    name: 'formulaSex',
    kind: 'enum',
    values: ['female', 'male'],
    nullable: true,
    about: 'Sex used in body formulas',
  },
] as const satisfies readonly Field[];

export const screeningFields = [
  text('sheetVersion', 20),
  {
    name: 'answers',
    kind: 'list',
    minItems: 1,
    maxItems: 80,
    of: {
      name: 'answer',
      kind: 'record',
      fields: [
        text('item', 60),
        { name: 'answer', kind: 'enum', values: screeningAnswers },
        {
          name: 'limbs',
          kind: 'list',
          optional: true,
          maxItems: 4,
          of: {
            name: 'limb',
            kind: 'record',
            fields: [
              { name: 'limb', kind: 'enum', values: limbs },
              { name: 'side', kind: 'enum', values: sides },
            ],
          },
        },
        {
          name: 'joints',
          kind: 'list',
          optional: true,
          maxItems: 20,
          of: { name: 'joint', kind: 'enum', values: joints },
        },
        { name: 'details', kind: 'list', optional: true, maxItems: 20, of: text('detail', 60) },
        { ...text('day', 10, 'Day it last happened'), optional: true },
        { ...text('note', 200, 'Note'), optional: true },
      ],
    },
  },
] as const satisfies readonly Field[];

export const clearanceFields = [
  { name: 'method', kind: 'enum', values: methods },
  { name: 'limb', kind: 'enum', values: limbs, nullable: true },
  { name: 'side', kind: 'enum', values: sides, nullable: true },
  { name: 'findings', kind: 'list', minItems: 1, maxItems: 20, of: text('finding', 60) },
  text('reason', 500, 'Reason'),
] as const satisfies readonly Field[];

export const effusionFields = [
  { name: 'joint', kind: 'enum', values: ['left-knee', 'right-knee'] },
  { name: 'grade', kind: 'enum', values: effusions },
] as const satisfies readonly Field[];

export const baselineFields = [
  { name: 'joint', kind: 'enum', values: joints },
  {
    name: 'usualPain',
    kind: 'integer',
    unit: '{score}',
    min: 0,
    max: 10,
    nullable: true,
    about: 'Usual pain',
  },
  {
    name: 'usualPainTop',
    kind: 'integer',
    unit: '{score}',
    min: 0,
    max: 10,
    nullable: true,
    about: 'Top of the usual band',
  },
  {
    name: 'acceptablePainLimit',
    kind: 'integer',
    unit: '{score}',
    min: 5,
    max: 7,
    about: 'Acceptable pain limit',
  },
  {
    name: 'usualStiffnessMinutes',
    kind: 'integer',
    unit: 'min',
    min: 0,
    max: 1440,
    about: 'Usual morning stiffness',
  },
  { name: 'usualSwelling', kind: 'enum', values: ['none', 'slight'], about: 'Usual swelling' },
  { name: 'usualEffusion', kind: 'enum', values: ['zero', 'trace', '1+'], about: 'Usual effusion' },
  {
    name: 'riseAcknowledged',
    kind: 'flag',
    optional: true,
    about: 'Usual pain is higher than when the plan began, and we have looked at it together',
  },
  text('reason', 500, 'Reason'),
] as const satisfies readonly Field[];

export const programmeFields = [
  {
    name: 'lines',
    kind: 'list',
    maxItems: 30,
    of: {
      name: 'line',
      kind: 'record',
      fields: [
        text('itemId', 64),
        {
          name: 'weekdays',
          kind: 'list',
          maxItems: 7,
          of: { name: 'weekday', kind: 'integer', unit: '1', min: 1, max: 7 },
        },
      ],
    },
  },
] as const satisfies readonly Field[];

export const responseFields = [
  text('decisionId', 64),
  { name: 'kind', kind: 'enum', values: ['accept', 'override'] },
  { name: 'decision', kind: 'enum', values: decisions, nullable: true },
  { name: 'reason', kind: 'text', minLength: 0, maxLength: 500 },
  { name: 'until', kind: 'day', nullable: true, about: 'Until' },
] as const satisfies readonly Field[];

/** Longest an override may hold before it has to be looked at again. */
const longestOverrideDays = 28;

export const baselineConsistent = (row: InputOf<typeof baselineFields>): readonly Refusal[] => {
  const field = 'input.usualPainTop';
  if (row.usualPainTop === null) return [];
  if (row.usualPain === null)
    return [{ field, code: 'inconsistent', reason: 'Enter the usual pain before its band.' }];
  if (row.usualPainTop < row.usualPain || row.usualPainTop > Math.min(10, row.usualPain + 2)) {
    return [
      {
        field,
        code: 'inconsistent',
        reason: `The top of the band must be from ${row.usualPain} to  ${Math.min(10, row.usualPain + 2)}.`,
      },
    ];
  }
  return [];
};

export const responseConsistent = (row: InputOf<typeof responseFields>, today: Day): readonly Refusal[] => {
  if (row.kind === 'accept') return [];
  const refusals: Refusal[] = [];
  if (row.decision === null)
    refusals.push({ field: 'input.decision', code: 'missing', reason: 'Choose the decision instead.' });
  if (row.reason.trim() === '')
    refusals.push({ field: 'input.reason', code: 'missing', reason: 'Write the reason for the override.' });
  if (row.until === null || !isDay(row.until)) {
    refusals.push({
      field: 'input.until',
      code: 'missing',
      reason: 'Enter the last day of the override.',
    });
  } else if (daysBetween(today, row.until) < 0 || daysBetween(today, row.until) > longestOverrideDays) {
    refusals.push({
      field: 'input.until',
      code: 'outside-validity',
      reason: `An override may end from today to ${longestOverrideDays} days ahead.`,
    });
  }
  return refusals;
};
