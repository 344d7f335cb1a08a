/**
 * What may be recorded of each measurement: bounds past which a value is refused as impossible,
 * and a narrower range past which the person entering it is asked to confirm. Both are choices of
 * this project, wide on purpose; no figure here gates treatment.
 */
import type { Field } from '#core/calculations/describe.ts';
import { limbs, sides } from '#core/exercises/joints.ts';
import { positions } from '#core/prescribing/dose.ts';
import type { Measurement } from './measurement.ts';

type MeasurementKind = Measurement['kind'];

export interface MeasurementForm {
  readonly kind: MeasurementKind;
  readonly title: string;
  readonly fields: readonly Field[];
  /** Name of the field, and the range outside which it is confirmed before it is kept. */
  readonly usual: readonly {
    readonly name: string;
    readonly low: number;
    readonly high: number;
    readonly unit: string;
  }[];
}

const day = { name: 'day', kind: 'text', minLength: 10, maxLength: 10 } as const;
const limb = { name: 'limb', kind: 'enum', values: limbs } as const;
const side = { name: 'side', kind: 'enum', values: sides } as const;
const position = { name: 'position', kind: 'enum', values: positions } as const;
const amount =
  (kind: 'number' | 'integer') =>
  (name: string, unit: string, min: number, max: number, about?: string): Field => ({
    name,
    kind,
    unit,
    min,
    max,
    about,
  });
const number = amount('number');
const whole = amount('integer');
const word = (name: string, about: string): Field => ({
  name,
  kind: 'text',
  minLength: 1,
  maxLength: 60,
  about,
});

const usually = (name: string, low: number, high: number, unit: string) => ({ name, low, high, unit });

/** Every row says first what it measures, and on which day. */
const form = (
  kind: MeasurementKind,
  title: string,
  fields: readonly Field[],
  usual: MeasurementForm['usual'] = [],
): MeasurementForm => ({
  kind,
  title,
  fields: [{ name: 'kind', kind: 'enum', values: [kind] }, day, ...fields],
  usual,
});

export const measurementForms: readonly MeasurementForm[] = [
  form(
    'body-mass',
    'Weight',
    [number('massKg', 'kg', 25, 350, 'Weight')],
    [usually('massKg', 40, 160, 'kg')],
  ),
  form(
    'stature',
    'Height',
    [number('statureCm', 'cm', 100, 250, 'Height')],
    [usually('statureCm', 140, 205, 'cm')],
  ),
  form(
    'body-fat',
    'Body fat',
    [number('bodyFatPercent', '%', 2, 75, 'Body fat'), word('method', 'How it was measured')],
    [usually('bodyFatPercent', 8, 55, '%')],
  ),
  form(
    'blood-pressure',
    'Blood pressure',
    [
      whole('systolicMmhg', 'mm[Hg]', 50, 300, 'Systolic'),
      whole('diastolicMmhg', 'mm[Hg]', 20, 200, 'Diastolic'),
      position,
    ],
    [usually('systolicMmhg', 90, 200, 'mm[Hg]'), usually('diastolicMmhg', 45, 120, 'mm[Hg]')],
  ),
  form(
    'limb-circumference',
    'Limb circumference',
    [
      limb,
      side,
      word('site', 'Where on the limb'),
      number('circumferenceCm', 'cm', 10, 120, 'Circumference'),
    ],
    [usually('circumferenceCm', 18, 80, 'cm')],
  ),
  form(
    'limb-occlusion-pressure',
    'Limb occlusion pressure',
    [
      limb,
      side,
      number('cuffWidthCm', 'cm', 3, 25, 'Cuff width'),
      position,
      { name: 'method', kind: 'enum', values: ['doppler', 'pulse-oximeter', 'automated'] },
      whole('firstMmhg', 'mm[Hg]', 50, 300, 'First reading'),
      whole('secondMmhg', 'mm[Hg]', 50, 300, 'Second reading'),
    ],
    [usually('firstMmhg', 90, 280, 'mm[Hg]'), usually('secondMmhg', 90, 280, 'mm[Hg]')],
  ),
  form('ankle-brachial-index', 'Ankle-brachial pressures', [
    side,
    whole('dorsalisPedisMmhg', 'mm[Hg]', 20, 350, 'Dorsalis pedis'),
    whole('posteriorTibialMmhg', 'mm[Hg]', 20, 350, 'Posterior tibial'),
    {
      name: 'brachialMmhg',
      kind: 'list',
      minItems: 1,
      maxItems: 2,
      about: 'Upper arm, one or both, in mmHg',
      of: whole('arm', 'mm[Hg]', 50, 300),
    },
  ]),
  form(
    'repetitions-to-failure',
    'Repetitions to failure at a load',
    [
      { name: 'exerciseId', kind: 'text', minLength: 1, maxLength: 60 },
      { name: 'side', kind: 'enum', values: [...sides, 'both'] },
      number('loadKg', 'kg', 0, 300, 'Load'),
      whole('repetitions', '{rep}', 1, 200, 'Repetitions'),
    ],
    [usually('repetitions', 1, 60, '{rep}')],
  ),
  form(
    'chair-stand-30s',
    '30-second chair stand',
    [whole('stands', '1', 0, 60, 'Stands')],
    [usually('stands', 2, 30, '1')],
  ),
  form(
    'timed-up-and-go',
    'Timed up and go',
    [number('seconds', 's', 2, 300, 'Time')],
    [usually('seconds', 4, 60, 's')],
  ),
  form(
    'grip',
    'Grip strength',
    [side, number('forceKg', 'kg', 0, 120, 'Grip')],
    [usually('forceKg', 3, 70, 'kg')],
  ),
  form(
    'isometric-force',
    'Isometric force',
    [word('site', 'Muscle group'), side, number('forceN', 'N', 0, 3000, 'Force')],
    [usually('forceN', 10, 1200, 'N')],
  ),
  form('joint-counts', 'Joint counts for an activity index', [
    whole('tender', '{joint}', 0, 28, 'Tender joints of 28'),
    whole('swollen', '{joint}', 0, 28, 'Swollen joints of 28'),
    number('patientGlobal', '{score}', 0, 10, 'Patient’s global rating'),
    number('clinicianGlobal', '{score}', 0, 10, 'Clinician’s global rating'),
  ]),
  form('patient-chosen-activity', 'Activity chosen by the patient', [
    word('activity', 'Activity, in the patient’s words'),
    whole('score', '{score}', 0, 10, '0 unable … 10 as before'),
  ]),
];

export const measurementForm = (kindOf: string): MeasurementForm | undefined =>
  measurementForms.find((form) => form.kind === kindOf);
