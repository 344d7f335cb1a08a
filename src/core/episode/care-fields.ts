/** Descriptors of limits, events and steps approved ahead. */

import type { Field, InputOf } from '../calculations/describe.ts';
import { joints } from '../exercises/joints.ts';
import type { Refusal } from '../outcome.ts';
import { medicineClasses } from '../screening/medicine-classes.ts';
import { type Day, daysBetween, isDay } from '../time/day.ts';
import { medicineActs } from './event-effects.ts';

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

export const limitFields = [
  { name: 'joint', kind: 'enum', values: joints, about: 'Joint' },
  {
    name: 'kind',
    kind: 'enum',
    values: ['weight-bearing', 'range', 'load-limit', 'no-impact', 'none'],
    about: 'Kind',
  },
  { name: 'limitKg', kind: 'number', unit: 'kg', min: 0, max: 300, nullable: true, about: 'Highest load' },
  text('from', 10, 'From'),
  { name: 'to', kind: 'text', minLength: 10, maxLength: 10, nullable: true, about: 'Last day' },
  text('author', 80, 'Set by'),
  remark,
] as const satisfies readonly Field[];

export const eventFields = [
  text('day', 10, 'Day'),
  {
    name: 'kind',
    kind: 'enum',
    values: ['medicine-change', 'joint-injection', 'surgery', 'fall', 'illness'],
    about: 'What happened',
  },
  { name: 'joint', kind: 'enum', values: joints, nullable: true, about: 'Joint' },
  { name: 'medicineAct', kind: 'enum', values: medicineActs, optional: true, about: 'The medicine was' },
  {
    name: 'medicineClass',
    kind: 'enum',
    values: [...medicineClasses.map(({ id }) => id), 'other'],
    optional: true,
    about: 'Kind of medicine',
  },
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
  reason: 'Give the day as YYYY-MM-DD, a day that exists.',
});

export const limitConsistent = (row: InputOf<typeof limitFields>): readonly Refusal[] => {
  const refusals: Refusal[] = [];
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
    refusals.push({ field: 'input.ceilingKg', code: 'inconsistent', reason });
  }
  return refusals;
};

export const eventConsistent = (row: InputOf<typeof eventFields>, today: Day): readonly Refusal[] => {
  if (!isDay(row.day)) return [notADay('day')];
  if ((row.medicineAct === undefined) !== (row.medicineClass === undefined)) {
    const reason = 'Enter the kind of medicine, and whether it was started, stopped or changed.';
    return [{ field: 'input.medicineClass', code: 'missing', reason }];
  }
  if (row.medicineAct !== undefined && row.kind !== 'medicine-change') {
    const reason = 'Name a medicine only for a change of medicine.';
    return [{ field: 'input.medicineAct', code: 'inconsistent', reason }];
  }
  if (daysBetween(row.day, today) < 0) {
    return [
      { field: 'input.day', code: 'too-high', reason: 'The day is after today; give the day it happened.' },
    ];
  }
  return [];
};
