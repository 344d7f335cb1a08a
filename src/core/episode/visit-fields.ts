/** Descriptors of appointments, supervised sessions, checks for a cuff at home, and a first visit. */
import type { Field } from '../calculations/describe.ts';
import { acceptablePainLimits } from '../decision/baseline/propose-pain-limit.ts';
import { joints, limbs, sides } from '../exercises/joints.ts';
import { careProfileFields } from '../record/staff-fields.ts';
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
  { name: 'day', kind: 'day', about: 'Day' },
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

const usual = <const N extends 'usualPain' | 'acceptablePainLimit', const L extends number>(
  name: N,
  min: L,
  max: number,
  about: string,
) => ({ name, kind: 'integer', unit: '{score}', min, max, nullable: true, about }) as const;

/** What a patient says of a joint at the first visit, before any diary; null: asked and not known. */
export const usualJointFields = [
  { name: 'joint', kind: 'enum', values: joints, about: 'Joint' },
  usual('usualPain', 0, 10, 'Usual pain'),
  usual('acceptablePainLimit', acceptablePainLimits.low, acceptablePainLimits.high, 'Acceptable pain limit'),
  {
    name: 'usualStiffnessMinutes',
    kind: 'integer',
    unit: 'min',
    min: 0,
    max: 1440,
    about: 'Usual morning stiffness',
  },
  { name: 'usualSwelling', kind: 'enum', values: ['none', 'slight'], about: 'Usual swelling' },
] as const satisfies readonly Field[];

const [
  diagnosis,
  inflammatoryArthritis,
  followedJoints,
  swellingNotAsked,
  asksFatigue,
  errorGroup,
  ownedLoadsKg,
  ownedEquipment,
] = careProfileFields;

/** Why the patient comes. */
export const reasonFields = [
  diagnosis,
  inflammatoryArthritis,
  followedJoints,
  swellingNotAsked,
  asksFatigue,
  errorGroup,
] as const satisfies readonly Field[];

/** What is at home; once asked the list is never empty, since an ordinary household is part of it. */
export const homeFields = [
  ownedLoadsKg,
  { ...ownedEquipment, optional: false, minItems: 1, about: 'Things at home' },
] as const satisfies readonly Field[];

export const restingPressureFields = [
  { name: 'systolicMmhg', kind: 'integer', unit: 'mm[Hg]', min: 60, max: 300, about: 'Systolic' },
  { name: 'diastolicMmhg', kind: 'integer', unit: 'mm[Hg]', min: 30, max: 200, about: 'Diastolic' },
] as const satisfies readonly Field[];

export const testToFailureFields = [
  text('exerciseId', 60, 'Exercise'),
  { name: 'side', kind: 'enum', values: [...sides, 'both'], about: 'Side' },
  { name: 'loadKg', kind: 'number', unit: 'kg', min: 0, max: 300, exclusiveMin: true, about: 'Load' },
  { name: 'repetitions', kind: 'integer', unit: '{rep}', min: 1, max: 60, about: 'Repetitions' },
] as const satisfies readonly Field[];

export const goalFields = [
  text('goal', 300, 'What the patient wants to be able to do'),
] as const satisfies readonly Field[];
