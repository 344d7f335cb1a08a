/**
 * What is entered of a protocol after surgery or injury: the operation, dated phases, and each step. The bounds of
 * a phase are the surgeon's; no figure here is the project's own.
 */
import type { Field, InputOf } from '../../calculations/describe.ts';
import { type Joint, joints } from '../../exercises/joints.ts';
import { movements } from '../../exercises/movements.ts';
import type { Refusal } from '../../outcome.ts';
import { weightBearings } from '../../record/limit.ts';
import { type Day, daysBetween } from '../../time/day.ts';
import { rangeRefusals } from '../limit-degrees.ts';

export const mostPhases = 8;

export const protocolFields = [
  { name: 'joint', kind: 'enum', values: joints, about: 'Joint' },
  { name: 'procedure', kind: 'text', minLength: 1, maxLength: 120, about: 'Operation or injury' },
  { name: 'on', kind: 'day', about: 'Day of it' },
  { name: 'author', kind: 'text', minLength: 1, maxLength: 80, about: 'Set by' },
  {
    name: 'letter',
    kind: 'text',
    minLength: 1,
    maxLength: 5000,
    nullable: true,
    about: 'Their letter, as text',
  },
] as const satisfies readonly Field[];

const degrees = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'number', unit: 'deg', min: -180, max: 180, nullable: true, about }) as const;

const isAllowed = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'flag', about }) as const;

export const phaseFields = [
  { name: 'place', kind: 'integer', unit: '1', min: 1, max: mostPhases, about: 'Phase number' },
  { name: 'name', kind: 'text', minLength: 1, maxLength: 80, about: 'Name of the phase' },
  { name: 'from', kind: 'day', about: 'Not before' },
  { name: 'weightBearing', kind: 'enum', values: weightBearings, about: 'Weight-bearing' },
  {
    name: 'bearKg',
    kind: 'number',
    unit: 'kg',
    min: 1,
    max: 200,
    nullable: true,
    onlyWhen: { field: 'weightBearing', is: ['partial'] },
    about: 'Weight through the limb, at most',
  },
  { name: 'movement', kind: 'enum', values: movements, nullable: true, about: 'Movement that is bounded' },
  degrees('fromDegrees', 'Allowed from'),
  degrees('toDegrees', 'Allowed to'),
  {
    name: 'limitKg',
    kind: 'number',
    unit: 'kg',
    min: 0,
    max: 300,
    nullable: true,
    about: 'Highest load of an exercise',
  },
  isAllowed('lowLoad', 'Low load is allowed'),
  isAllowed('variation', 'Exercise variations are allowed'),
  isAllowed('occlusion', 'Occlusion work is allowed'),
] as const satisfies readonly Field[];

/** What a phase that begins to hold rests on; asked as well where the one that holds is written anew. */
export const seenFields = [
  {
    name: 'seen',
    kind: 'text',
    minLength: 1,
    maxLength: 300,
    about: 'What you saw, or who allowed it',
  },
] as const satisfies readonly Field[];

export const stepFields = [
  { name: 'place', kind: 'integer', unit: '1', min: 1, max: mostPhases, about: 'Phase number' },
  ...seenFields,
] as const satisfies readonly Field[];

export const endFields = [
  { name: 'reason', kind: 'text', minLength: 1, maxLength: 300, about: 'Why it ends' },
] as const satisfies readonly Field[];

export type PhaseRow = InputOf<typeof phaseFields>;

const wrong = (field: string, reason: string): Refusal => ({
  field: `input.${field}`,
  code: 'inconsistent',
  reason,
});

export const protocolConsistent = (row: InputOf<typeof protocolFields>, today: Day): readonly Refusal[] =>
  daysBetween(row.on, today) < 0
    ? [{ field: 'input.on', code: 'too-high', reason: 'The day is after today; give the day it happened.' }]
    : [];

/** A phase against the joint it is for, the day of the operation, and the phases before and after it. */
export const phaseConsistent = (
  row: PhaseRow,
  of: {
    readonly joint: Joint;
    readonly on: Day;
    readonly phases: readonly Pick<PhaseRow, 'place' | 'from'>[];
  },
): readonly Refusal[] => {
  const refusals: Refusal[] = [...rangeRefusals(of.joint, row)];
  if ((row.weightBearing === 'partial') !== (row.bearKg !== null)) {
    const reason =
      row.weightBearing === 'partial'
        ? 'Partial weight-bearing needs its kilograms.'
        : 'Only partial weight-bearing has kilograms; leave them out.';
    refusals.push(wrong('bearKg', reason));
  }
  if (row.from < of.on) refusals.push(wrong('from', 'A phase begins on the day of the operation or later.'));
  const placesBefore = of.phases.filter(({ place }) => place < row.place);
  if (placesBefore.length < row.place - 1)
    refusals.push(wrong('place', `Write phase ${placesBefore.length + 1} first.`));
  if (placesBefore.some(({ from }) => from > row.from))
    refusals.push(wrong('from', 'An earlier phase begins later than this; check the days.'));
  if (of.phases.some(({ place, from }) => place > row.place && from < row.from))
    refusals.push(wrong('from', 'A later phase begins before this; check the days.'));
  if (!row.lowLoad && !row.variation && !row.occlusion)
    refusals.push(
      wrong('lowLoad', 'A phase without any method leaves nothing to prescribe; allow one, or wait.'),
    );
  return refusals;
};
