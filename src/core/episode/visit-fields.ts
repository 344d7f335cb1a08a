/** Descriptors of appointments, supervised sessions, checks for a cuff at home, and a first visit. */
import type { Field } from '../calculations/describe.ts';
import { limbs, sides } from '../exercises/joints.ts';
import { lowLoadRequestFields } from '../prescribing/dose-request.ts';
import { careProfileFields, screeningFields } from '../record/staff-fields.ts';
import { visitPlaces } from './remote-visit.ts';

const text = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, about }) as const;
const textOrNull = <const N extends string>(name: N, maxLength: number, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength, nullable: true, about }) as const;
const site = [
  { name: 'limb', kind: 'enum', values: limbs, about: 'Limb' },
  { name: 'side', kind: 'enum', values: sides, about: 'Side' },
] as const;
const yes = <const N extends string>(name: N, about: string) => ({ name, kind: 'flag', about }) as const;

export const visitFields = [
  { name: 'place', kind: 'enum', values: visitPlaces, about: 'Where' },
  textOrNull('whereabouts', 200, 'Where the patient is now'),
  textOrNull('callBackPhone', 30, 'Number to ring if the call drops'),
  {
    name: 'present',
    kind: 'list',
    maxItems: 8,
    about: 'Who is with the patient',
    of: text('person', 80, 'Person'),
  },
] as const satisfies readonly Field[];

export const observedSessionFields = [
  ...site,
  text('day', 10, 'Day'),
  yes(
    'supervisedThroughout',
    'Supervised from putting the cuff on until it was off and the limb was normal again',
  ),
  textOrNull('remoteReason', 300, 'Reason for doing it remotely'),
  textOrNull('remark', 300, 'Note'),
] as const satisfies readonly Field[];

export const homeCheckFields = [
  ...site,
  yes('releasesWithLeftHand', 'Takes it off unaided with the left hand'),
  yes('releasesWithRightHand', 'Takes it off unaided with the right hand'),
  yes('feelingIntact', 'Feeling in the limb is intact'),
  yes('knowsToRelease', 'Knows: if the phone stops, take it off'),
  yes('wrapOpened', 'Elastic wrap at home allowed for this limb'),
  textOrNull('reason', 300, 'Reason for allowing a wrap'),
] as const satisfies readonly Field[];

/** What the first visit sends at once; what it leaves out stays as it is on record. */
export const firstVisitFields = [
  { name: 'profile', kind: 'record', fields: careProfileFields, about: 'Care profile' },
  { name: 'screening', kind: 'record', fields: screeningFields, about: 'Screening' },
  {
    name: 'pressure',
    kind: 'record',
    nullable: true,
    about: 'Resting blood pressure',
    fields: [
      { name: 'systolicMmhg', kind: 'integer', unit: 'mm[Hg]', min: 60, max: 300, about: 'Systolic' },
      { name: 'diastolicMmhg', kind: 'integer', unit: 'mm[Hg]', min: 30, max: 200, about: 'Diastolic' },
    ],
  },
  {
    name: 'test',
    kind: 'record',
    nullable: true,
    about: 'Repetitions to failure at a load',
    fields: [
      { name: 'loadKg', kind: 'number', unit: 'kg', min: 0, max: 300, exclusiveMin: true, about: 'Load' },
      { name: 'repetitions', kind: 'integer', unit: '{rep}', min: 1, max: 60, about: 'Repetitions' },
    ],
  },
  { name: 'request', kind: 'record', fields: lowLoadRequestFields, about: 'Exercise' },
  textOrNull('goal', 300, 'What the patient wants to be able to do'),
] as const satisfies readonly Field[];
