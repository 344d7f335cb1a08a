/** Descriptors of what a clinician enters about an episode of care. */
import type { Field, InputOf } from '../calculations/describe.ts';
import { joints } from '../exercises/joints.ts';
import type { Refusal } from '../outcome.ts';
import { mostFollowedJoints } from '../record/followed-joints.ts';
import { breakKinds, episodeStates } from './episode.ts';

const text = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, about }) as const;
const textOrNull = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, nullable: true, about }) as const;
const jointList = <const N extends string>(name: N, maxItems: number, about: string) =>
  ({
    name,
    kind: 'list',
    minItems: 1,
    maxItems,
    about,
    of: { name: 'joint', kind: 'enum', values: joints },
  }) as const;

export const episodeFields = [
  {
    name: 'diagnoses',
    kind: 'list',
    minItems: 1,
    maxItems: 6,
    about: 'Diagnoses',
    of: text('diagnosis', 200, 'Diagnosis'),
  },
  jointList('joints', 8, 'Joints affected'),
  jointList('followedJoints', mostFollowedJoints, 'Joints asked about daily'),
  {
    name: 'goals',
    kind: 'list',
    maxItems: 5,
    about: 'What the patient wants to be able to do, in their own words',
    of: text('goal', 300, 'Goal'),
  },
  textOrNull('referrer', 120, 'Referred by'),
  {
    name: 'contacts',
    kind: 'list',
    maxItems: 6,
    about: 'Other contacts',
    of: {
      name: 'contact',
      kind: 'record',
      fields: [text('role', 60, 'Role'), text('name', 80, 'Name'), textOrNull('phone', 30, 'Telephone')],
    },
  },
] as const satisfies readonly Field[];

export const episodeConsistent = (row: InputOf<typeof episodeFields>): readonly Refusal[] => {
  const stray = row.followedJoints.find((joint) => !row.joints.includes(joint));
  return stray
    ? [
        {
          field: 'input.followedJoints',
          code: 'inconsistent',
          reason: `${stray} is followed daily but is not among the joints affected; add it there.`,
        },
      ]
    : [];
};

export const episodeChangeFields = [
  text('episodeId', 64, 'Episode of care'),
  { name: 'to', kind: 'enum', values: episodeStates, about: 'Change' },
  { name: 'on', kind: 'day', about: 'From' },
  text('reason', 300, 'Reason'),
  { name: 'breakKind', kind: 'enum', values: breakKinds, nullable: true, about: 'Kind of break' },
  {
    name: 'expectedBack',
    kind: 'day',
    nullable: true,
    about: 'Expected back',
  },
] as const satisfies readonly Field[];
