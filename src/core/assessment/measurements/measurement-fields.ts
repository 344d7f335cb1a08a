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
const number = (name: string, unit: string, min: number, max: number, about?: string): Field => ({
  name,
  kind: 'number',
  unit,
  min,
  max,
  about,
});
const whole = (name: string, unit: string, min: number, max: number, about?: string): Field => ({
  name,
  kind: 'integer',
  unit,
  min,
  max,
  about,
});
const kind = (value: MeasurementKind): Field => ({ name: 'kind', kind: 'enum', values: [value] });
const word = (name: string, about: string): Field => ({
  name,
  kind: 'text',
  minLength: 1,
  maxLength: 60,
  about,
});

export const measurementForms: readonly MeasurementForm[] = [
  {
    kind: 'body-mass',
    title: 'Weight',
    fields: [kind('body-mass'), day, number('massKg', 'kg', 25, 350, 'Weight')],
    usual: [{ name: 'massKg', low: 40, high: 160, unit: 'kg' }],
  },
  {
    kind: 'stature',
    title: 'Height',
    fields: [kind('stature'), day, number('statureCm', 'cm', 100, 250, 'Height')],
    usual: [{ name: 'statureCm', low: 140, high: 205, unit: 'cm' }],
  },
  {
    kind: 'body-fat',
    title: 'Body fat',
    fields: [
      kind('body-fat'),
      day,
      number('bodyFatPercent', '%', 2, 75, 'Body fat'),
      word('method', 'How it was measured'),
    ],
    usual: [{ name: 'bodyFatPercent', low: 8, high: 55, unit: '%' }],
  },
  {
    kind: 'blood-pressure',
    title: 'Blood pressure',
    fields: [
      kind('blood-pressure'),
      day,
      whole('systolicMmhg', 'mm[Hg]', 50, 300, 'Systolic'),
      whole('diastolicMmhg', 'mm[Hg]', 20, 200, 'Diastolic'),
      position,
    ],
    usual: [
      { name: 'systolicMmhg', low: 90, high: 200, unit: 'mm[Hg]' },
      { name: 'diastolicMmhg', low: 45, high: 120, unit: 'mm[Hg]' },
    ],
  },
  {
    kind: 'limb-circumference',
    title: 'Limb circumference',
    fields: [
      kind('limb-circumference'),
      day,
      limb,
      side,
      word('site', 'Where on the limb'),
      number('circumferenceCm', 'cm', 10, 120, 'Circumference'),
    ],
    usual: [{ name: 'circumferenceCm', low: 18, high: 80, unit: 'cm' }],
  },
  {
    kind: 'limb-occlusion-pressure',
    title: 'Limb occlusion pressure',
    fields: [
      kind('limb-occlusion-pressure'),
      day,
      limb,
      side,
      number('cuffWidthCm', 'cm', 3, 25, 'Cuff width'),
      position,
      { name: 'method', kind: 'enum', values: ['doppler', 'pulse-oximeter', 'automated'] },
      whole('firstMmhg', 'mm[Hg]', 50, 300, 'First reading'),
      whole('secondMmhg', 'mm[Hg]', 50, 300, 'Second reading'),
    ],
    usual: [
      { name: 'firstMmhg', low: 90, high: 280, unit: 'mm[Hg]' },
      { name: 'secondMmhg', low: 90, high: 280, unit: 'mm[Hg]' },
    ],
  },
  {
    kind: 'ankle-brachial-index',
    title: 'Ankle-brachial pressures',
    fields: [
      kind('ankle-brachial-index'),
      day,
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
    ],
    usual: [],
  },
  {
    kind: 'repetitions-to-failure',
    title: 'Repetitions to failure at a load',
    fields: [
      kind('repetitions-to-failure'),
      day,
      { name: 'exerciseId', kind: 'text', minLength: 1, maxLength: 60 },
      { name: 'side', kind: 'enum', values: [...sides, 'both'] },
      number('loadKg', 'kg', 0, 300, 'Load'),
      whole('repetitions', '{rep}', 1, 200, 'Repetitions'),
    ],
    usual: [{ name: 'repetitions', low: 1, high: 60, unit: '{rep}' }],
  },
  {
    kind: 'chair-stand-30s',
    title: '30-second chair stand',
    fields: [kind('chair-stand-30s'), day, whole('stands', '1', 0, 60, 'Stands')],
    usual: [{ name: 'stands', low: 2, high: 30, unit: '1' }],
  },
  {
    kind: 'timed-up-and-go',
    title: 'Timed up and go',
    fields: [kind('timed-up-and-go'), day, number('seconds', 's', 2, 300, 'Time')],
    usual: [{ name: 'seconds', low: 4, high: 60, unit: 's' }],
  },
  {
    kind: 'grip',
    title: 'Grip strength',
    fields: [kind('grip'), day, side, number('forceKg', 'kg', 0, 120, 'Grip')],
    usual: [{ name: 'forceKg', low: 3, high: 70, unit: 'kg' }],
  },
  {
    kind: 'isometric-force',
    title: 'Isometric force',
    fields: [
      kind('isometric-force'),
      day,
      word('site', 'Muscle group'),
      side,
      number('forceN', 'N', 0, 3000, 'Force'),
    ],
    usual: [{ name: 'forceN', low: 10, high: 1200, unit: 'N' }],
  },
  {
    kind: 'joint-counts',
    title: 'Joint counts for an activity index',
    fields: [
      kind('joint-counts'),
      day,
      whole('tender', '{joint}', 0, 28, 'Tender joints of 28'),
      whole('swollen', '{joint}', 0, 28, 'Swollen joints of 28'),
      number('patientGlobal', '{score}', 0, 10, 'Patient’s global rating'),
      number('clinicianGlobal', '{score}', 0, 10, 'Clinician’s global rating'),
    ],
    usual: [],
  },
  {
    kind: 'patient-chosen-activity',
    title: 'Activity chosen by the patient',
    fields: [
      kind('patient-chosen-activity'),
      day,
      word('activity', 'Activity, in the patient’s words'),
      whole('score', '{score}', 0, 10, '0 unable … 10 as before'),
    ],
    usual: [],
  },
];

export const measurementForm = (kindOf: string): MeasurementForm | undefined =>
  measurementForms.find((form) => form.kind === kindOf);
