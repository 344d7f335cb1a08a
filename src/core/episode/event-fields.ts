/** Descriptor of what happened to a patient: treatment, an operation, a fall, an illness. */

import type { Field, InputOf } from '../calculations/describe.ts';
import { joints } from '../exercises/joints.ts';
import type { Refusal } from '../outcome.ts';
import { type Day, daysBetween, isDay } from '../time/day.ts';
import { careEventKinds, courseForms } from './care-event.ts';
import { medicineActs } from './event-effects.ts';
import { treatmentClasses } from './treatment/treatment-classes.ts';

/** A longer course is a long-term medicine, which has a kind of its own. */
const longestCourseDays = 182;

const onlyFor = (...is: readonly string[]) => ({ optional: true, onlyWhen: { field: 'kind', is } }) as const;

export const eventFields = [
  { name: 'day', kind: 'day', about: 'Day' },
  { name: 'kind', kind: 'enum', values: careEventKinds, about: 'What happened' },
  { name: 'joint', kind: 'enum', values: joints, nullable: true, about: 'Joint' },
  {
    name: 'medicineAct',
    kind: 'enum',
    values: medicineActs,
    ...onlyFor('medicine-change'),
    about: 'The medicine was',
  },
  {
    name: 'medicineClass',
    kind: 'enum',
    values: treatmentClasses,
    ...onlyFor('medicine-change', 'missed-dose'),
    about: 'Kind of medicine',
  },
  { name: 'lastDay', kind: 'day', ...onlyFor('steroid-course'), about: 'Last day of the course' },
  {
    name: 'courseForm',
    kind: 'enum',
    values: courseForms,
    ...onlyFor('steroid-course'),
    about: 'Dose over the course',
  },
  {
    name: 'remark',
    kind: 'text',
    minLength: 1,
    maxLength: 300,
    nullable: true,
    about: 'Note',
  },
] as const satisfies readonly Field[];

type EventRow = InputOf<typeof eventFields>;

const refusal = (field: string, code: Refusal['code'], reason: string): readonly Refusal[] => [
  { field: `input.${field}`, code, reason },
];

const medicineConsistent = ({ kind, medicineAct, medicineClass }: EventRow): readonly Refusal[] => {
  if (kind === 'missed-dose') {
    if (medicineAct !== undefined)
      return refusal('medicineAct', 'inconsistent', 'A missed dose changes no medicine; leave this out.');
    return medicineClass === undefined
      ? refusal('medicineClass', 'missing', 'Enter the kind of medicine whose dose was missed.')
      : [];
  }
  if ((medicineAct === undefined) !== (medicineClass === undefined)) {
    const reason = 'Enter the kind of medicine, and whether it was started, stopped or changed.';
    return refusal('medicineClass', 'missing', reason);
  }
  return medicineAct !== undefined && kind !== 'medicine-change'
    ? refusal('medicineAct', 'inconsistent', 'Name a medicine only for a change of medicine.')
    : [];
};

const courseConsistent = ({ kind, day, lastDay, courseForm }: EventRow): readonly Refusal[] => {
  if (kind !== 'steroid-course') {
    return lastDay !== undefined || courseForm !== undefined
      ? refusal('lastDay', 'inconsistent', 'Only a course of steroid has a last day and a dose over it.')
      : [];
  }
  if (lastDay === undefined || !isDay(lastDay))
    return refusal('lastDay', 'missing', 'Enter the last day of the course, as planned.');
  if (courseForm === undefined)
    return refusal('courseForm', 'missing', 'Say whether the dose stays the same or is tapered.');
  const days = daysBetween(day as Day, lastDay);
  if (days < 0)
    return refusal('lastDay', 'inconsistent', 'The course ends before it begins; check both days.');
  return days > longestCourseDays
    ? refusal(
        'lastDay',
        'too-high',
        `A course may last ${longestCourseDays} days. Enter a longer one as a long-term steroid that was started.`,
      )
    : [];
};

export const eventConsistent = (row: EventRow, today: Day): readonly Refusal[] => {
  if (!isDay(row.day)) return refusal('day', 'wrong-type', 'Give a day that exists.');
  const found = [...medicineConsistent(row), ...courseConsistent(row)];
  if (found.length > 0) return found;
  return daysBetween(row.day, today) < 0
    ? refusal('day', 'too-high', 'The day is after today; give the day it happened.')
    : [];
};
