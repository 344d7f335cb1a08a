/** What a clinician asks for when a dose is proposed. What is left out is filled from the clinic's choices. */
import type { Field, InputOf } from '../calculations/describe.ts';
import { limbs, sides } from '../exercises/joints.ts';
import { positions } from './dose.ts';

const exercise = {
  name: 'exerciseId',
  kind: 'text',
  minLength: 1,
  maxLength: 60,
  about: 'Exercise',
} as const;
const side = { name: 'side', kind: 'enum', values: [...sides, 'both'], about: 'Side' } as const;
const whole = <const N extends string>(name: N, unit: string, min: number, max: number, about: string) =>
  ({ name, kind: 'integer', unit, min, max, optional: true, about }) as const;
const tempo = {
  name: 'secondsPerRepetition',
  kind: 'number',
  unit: 's',
  min: 2,
  max: 8,
  optional: true,
  about: 'Seconds for one repetition',
} as const;

const common = [
  whole('sets', '1', 1, 6, 'Sets'),
  whole('repetitionsLow', '{rep}', 1, 60, 'Fewest repetitions'),
  whole('repetitionsHigh', '{rep}', 1, 60, 'Most repetitions'),
  whole('reserve', '{rep}', 0, 3, 'Repetitions in reserve'),
  whole('restSeconds', 's', 15, 300, 'Rest between sets'),
  tempo,
  whole('sessionsPerWeek', '1', 1, 7, 'Sessions a week'),
] as const;

export const lowLoadRequestFields = [
  { name: 'method', kind: 'enum', values: ['low-load'] },
  exercise,
  side,
  { name: 'machineId', kind: 'text', minLength: 1, maxLength: 64, optional: true, about: 'Machine' },
  {
    name: 'knownOneRepMaxKg',
    kind: 'number',
    unit: 'kg',
    min: 0,
    max: 300,
    exclusiveMin: true,
    optional: true,
    about: 'Known one-repetition maximum',
  },
  {
    name: 'loadKg',
    kind: 'number',
    unit: 'kg',
    min: 0,
    max: 300,
    exclusiveMin: true,
    optional: true,
    about: 'Load',
  },
  {
    name: 'percent',
    kind: 'number',
    unit: '%',
    min: 1,
    max: 100,
    optional: true,
    about: 'Share of the maximum',
  },
  ...common,
] as const satisfies readonly Field[];

export const variationRequestFields = [
  { name: 'method', kind: 'enum', values: ['variation'] },
  exercise,
  side,
  {
    name: 'addedKg',
    kind: 'number',
    unit: 'kg',
    min: 0,
    max: 100,
    exclusiveMin: true,
    optional: true,
    about: 'Load added',
  },
  whole('holdSeconds', 's', 2, 60, 'Seconds of each hold'),
  whole('mostHoldSeconds', 's', 2, 60, 'Longest hold that steps lead to'),
  whole('mark', '1', 1, 9, 'Mark of the putty, ring or band, 1 = softest of the clinic’s own row'),
  ...common,
] as const satisfies readonly Field[];

export const occlusionRequestFields = [
  { name: 'method', kind: 'enum', values: ['occlusion'] },
  exercise,
  { name: 'limb', kind: 'enum', values: [...limbs, 'trunk'], about: 'Limb' },
  side,
  { name: 'schemeId', kind: 'text', minLength: 1, maxLength: 60, about: 'Scheme' },
  { name: 'cuffKind', kind: 'enum', values: ['pneumatic', 'elastic-wrap'], about: 'Cuff' },
  { name: 'cuffWidthCm', kind: 'number', unit: 'cm', min: 3, max: 25, optional: true, about: 'Cuff width' },
  { name: 'position', kind: 'enum', values: positions, optional: true, about: 'Position' },
  {
    name: 'percent',
    kind: 'number',
    unit: '%',
    min: 1,
    max: 100,
    optional: true,
    about: 'Share of the occlusion pressure',
  },
  {
    name: 'tightness',
    kind: 'integer',
    unit: '{score}',
    min: 0,
    max: 10,
    optional: true,
    about: 'Tightness of the wrap',
  },
  { name: 'loadKg', kind: 'number', unit: 'kg', min: 0, max: 200, about: 'Load' },
  {
    name: 'knownOneRepMaxKg',
    kind: 'number',
    unit: 'kg',
    min: 0,
    max: 300,
    exclusiveMin: true,
    optional: true,
    about: 'Known one-repetition maximum',
  },
  {
    name: 'secondsPerRepetition',
    kind: 'number',
    unit: 's',
    min: 1,
    max: 10,
    about: 'Seconds for one repetition',
  },
  { name: 'restSeconds', kind: 'integer', unit: 's', min: 5, max: 300, about: 'Rest between sets' },
  { name: 'sessionsPerWeek', kind: 'integer', unit: '1', min: 1, max: 7, about: 'Sessions a week' },
  { name: 'supervised', kind: 'flag', about: 'A clinician is present' },
  {
    name: 'pulseShown',
    kind: 'flag',
    optional: true,
    about: 'Patient was shown how to feel the pulse beyond the cuff',
  },
] as const satisfies readonly Field[];

export type LowLoadRequest = InputOf<typeof lowLoadRequestFields>;
export type VariationRequest = InputOf<typeof variationRequestFields>;
export type OcclusionRequestInput = InputOf<typeof occlusionRequestFields>;
