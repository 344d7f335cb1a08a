/** Descriptors of limits and of steps approved ahead. */

import type { Field, InputOf } from '../calculations/describe.ts';
import { type Joint, joints } from '../exercises/joints.ts';
import { movements } from '../exercises/movements.ts';
import type { Refusal } from '../outcome.ts';
import { daysBetween, isDay } from '../time/day.ts';
import { rangeRefusals } from './limit-degrees.ts';

const text = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, about }) as const;
const remark = {
  name: 'remark',
  kind: 'text',
  minLength: 1,
  maxLength: 300,
  nullable: true,
  about: 'Note',
} as const;

const ofRange = {
  optional: true,
  nullable: true,
  onlyWhen: { field: 'kind', is: ['range'] },
} as const;
const degrees = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'number', unit: 'deg', min: -180, max: 180, ...ofRange, about }) as const;

export const limitFields = [
  { name: 'joint', kind: 'enum', values: joints, about: 'Joint' },
  {
    name: 'kind',
    kind: 'enum',
    values: ['weight-bearing', 'range', 'load-limit', 'no-impact', 'none'],
    about: 'Kind',
  },
  {
    name: 'limitKg',
    kind: 'number',
    unit: 'kg',
    min: 0,
    max: 300,
    nullable: true,
    onlyWhen: { field: 'kind', is: ['load-limit'] },
    about: 'Highest load',
  },
  { name: 'movement', kind: 'enum', values: movements, ...ofRange, about: 'Movement' },
  degrees('fromDegrees', 'Allowed from'),
  degrees('toDegrees', 'Allowed to'),
  { name: 'from', kind: 'day', about: 'From' },
  { name: 'to', kind: 'day', nullable: true, about: 'Last day' },
  text('author', 80, 'Set by'),
  remark,
] as const satisfies readonly Field[];

export const preApprovalFields = [
  text('itemId', 64, 'Prescribed exercise'),
  { name: 'steps', kind: 'integer', unit: '1', min: 1, max: 3, about: 'Steps' },
  { name: 'days', kind: 'integer', unit: 'd', min: 1, max: 28, about: 'Days' },
] as const satisfies readonly Field[];

const notADay = (field: string): Refusal => ({
  field: `input.${field}`,
  code: 'wrong-type',
  reason: 'Give a day that exists.',
});

type LimitRow = InputOf<typeof limitFields>;

const inconsistent = (field: string, reason: string): Refusal => ({
  field: `input.${field}`,
  code: 'inconsistent',
  reason,
});

/** Degrees belong to a range. */
const degreesConsistent = (row: LimitRow): readonly Refusal[] => {
  const { movement = null, fromDegrees = null, toDegrees = null } = row;
  const isGiven = movement !== null || fromDegrees !== null || toDegrees !== null;
  return isGiven && row.kind !== 'range'
    ? [inconsistent('movement', 'Only a limit on range has a movement and degrees; leave them out.')]
    : rangeRefusals(row.joint as Joint, { movement, fromDegrees, toDegrees });
};

export const limitConsistent = (row: LimitRow): readonly Refusal[] => {
  const refusals: Refusal[] = [...degreesConsistent(row)];
  if (!isDay(row.from)) refusals.push(notADay('from'));
  if (row.to !== null && !isDay(row.to)) refusals.push(notADay('to'));
  else if (row.to !== null && isDay(row.from) && daysBetween(row.from, row.to) < 0) {
    refusals.push({
      field: 'input.to',
      code: 'inconsistent',
      reason: 'The last day is before the first; check both.',
    });
  }
  if ((row.kind === 'load-limit') !== (row.limitKg !== null)) {
    const reason =
      row.kind === 'load-limit'
        ? 'Enter the highest load in kilograms.'
        : 'Only a load limit has kilograms; leave them out.';
    refusals.push(inconsistent('limitKg', reason));
  }
  return refusals;
};
