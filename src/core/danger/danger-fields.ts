/** Descriptors of what a clinician writes about danger, and the rules that cross fields. */
import type { Field, InputOf } from '../calculations/describe.ts';
import { redFlags } from '../decision/facts/facts.ts';
import { joints } from '../exercises/joints.ts';
import type { Refusal } from '../outcome.ts';
import { type Day, daysBetween, isDay } from '../time/day.ts';
import { pauseCauses, reached } from './danger.ts';

const text = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, about }) as const;
const textOrNull = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, nullable: true, about }) as const;

/** Most characters of what was found, and of what was advised. */
const longestFinding = 500;

/** A sign told by telephone, from the same list as on the phone. */
export const signFields = [
  {
    name: 'flags',
    kind: 'list',
    minItems: 1,
    maxItems: redFlags.length,
    about: 'Warning signs',
    of: { name: 'flag', kind: 'enum', values: redFlags },
  },
  { name: 'joint', kind: 'enum', values: joints, nullable: true, about: 'Joint' },
  textOrNull('remark', 300, 'Note'),
] as const satisfies readonly Field[];

export const contactFields = [
  {
    name: 'signIds',
    kind: 'list',
    maxItems: 20,
    about: 'Warning signs it was about',
    of: { name: 'sign', kind: 'text', maxLength: 64 },
  },
  {
    name: 'decisionIds',
    kind: 'list',
    maxItems: 20,
    about: 'Decisions it was about',
    of: { name: 'decision', kind: 'text', maxLength: 64 },
  },
  { name: 'reached', kind: 'enum', values: reached, about: 'Reached' },
  textOrNull('found', longestFinding, 'Found'),
  textOrNull('advised', longestFinding, 'Advised'),
  textOrNull('referredTo', 200, 'Referred to'),
  {
    name: 'againInHours',
    kind: 'integer',
    unit: 'h',
    min: 1,
    max: 24,
    nullable: true,
    about: 'Try again in',
  },
] as const satisfies readonly Field[];

export const pauseFields = [
  { name: 'cause', kind: 'enum', values: pauseCauses, about: 'Because of' },
  { name: 'joint', kind: 'enum', values: joints, nullable: true, about: 'Joint' },
  text('reason', 300, 'Reason'),
  {
    name: 'until',
    kind: 'day',
    nullable: true,
    about: 'Consider resuming on',
  },
] as const satisfies readonly Field[];

const missing = (field: string, reason: string): Refusal => ({
  field: `input.${field}`,
  code: 'missing',
  reason,
});

/** A contact that reached somebody says what was found and advised; one that did not says when it is tried again. */
export const contactConsistent = (row: InputOf<typeof contactFields>): readonly Refusal[] => {
  if (row.signIds.length + row.decisionIds.length === 0)
    return [missing('signIds', 'Say which warning sign or decision the contact was about.')];
  if (row.reached === 'nobody')
    return row.againInHours === null
      ? [missing('againInHours', 'Enter when it will be tried again: within the next 24 hours.')]
      : [];
  return [
    ...(row.found === null ? [missing('found', 'Enter what you found.')] : []),
    ...(row.advised === null ? [missing('advised', 'Enter what you advised.')] : []),
  ];
};

export const pauseConsistent = (row: InputOf<typeof pauseFields>, today: Day): readonly Refusal[] => {
  if (row.until === null) return [];
  if (row.cause === 'warning-sign')
    return [
      {
        field: 'input.until',
        code: 'outside-validity',
        reason: 'A concern of yours ends only by a contact that reached the patient. Leave the day out.',
      },
    ];
  if (isDay(row.until) && daysBetween(today, row.until) >= 0) return [];
  return [
    {
      field: 'input.until',
      code: 'outside-validity',
      reason: 'Enter a day from today on, or leave it out.',
    },
  ];
};
