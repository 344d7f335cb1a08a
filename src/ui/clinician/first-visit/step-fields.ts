/** What the steps type, by its names, with the labels of the page and the bounds of what it is kept as. */
import { bodyMass } from '#core/assessment/measures/body-mass.ts';
import { stature } from '#core/assessment/measures/stature.ts';
import type { Field } from '#core/calculations/describe.ts';
import {
  homeFields,
  reasonFields,
  restingPressureFields,
  testToFailureFields,
  usualJointFields,
} from '#core/episode/visit-fields.ts';
import { joints } from '#core/exercises/joints.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { labelOf } from '../forms/field-words.ts';

const part = (
  name: string,
  fields: readonly Field[],
  labels: Readonly<Record<string, string>> = {},
): Field => ({
  name,
  kind: 'record',
  fields: fields.map((field) => {
    const about = labels[field.name];
    return about ? { ...field, about } : field;
  }),
});

/** Of two joints each says whose value it is. */
const usualOf = (joint: (typeof joints)[number]): Field =>
  part(
    joint,
    usualJointFields.map((field) => ({ ...field, about: `${labelOf(field)}, ${jointInWords(joint)}` })),
  );

export const stepFields: readonly Field[] = [
  part('reason', reasonFields, {
    inflammatoryArthritis: say('inflammatory-arthritis'),
    followedJoints: say('joint-to-follow-every-day'),
  }),
  part('joints', joints.map(usualOf)),
  part('home', homeFields),
  part('pressure', restingPressureFields, {
    systolicMmhg: say('resting-blood-pressure-upper'),
    diastolicMmhg: say('resting-blood-pressure-lower-whole'),
  }),
  part('mass', bodyMass.fields),
  part('stature', stature.fields),
  part('test', testToFailureFields, {
    loadKg: say('test-load'),
    repetitions: say('test-repetitions-to-failure'),
  }),
];
