/** Forms of the review: values of a joint, a message, a booking, another decision in the place of one. */
import type { Field } from '#core/calculations/describe.ts';
import { decisions } from '#core/decision/answers.ts';
import { baselineFields } from '#core/record/staff-fields.ts';
import { bookingFields } from '#core/review/booking-fields.ts';
import { say } from '#messages/en/staff/review.ts';
import { callsFor, deskFrom } from '../../desk-calls.ts';
import { nullFrom, ofPatient, patientForm, type SentForm } from './sent-form.ts';

const reviewOf: SentForm['page'] = (about) => `/patients/${ofPatient(about)}/review`;

const valuesOfJoint = baselineFields.filter((field) => field.name !== 'joint');

/** `seen`: how often values were set for the joint when the page was opened. */
export const setBaseline: SentForm = {
  name: 'baseline',
  about: ['patientId', 'joint', 'seen'],
  prefix: () => 'baseline-',
  fields: () => valuesOfJoint,
  page: reviewOf,
  taken: say('baseline.taken'),
  send: ({ clinician }, { about, value }) =>
    clinician.review.setBaseline.mutate({
      patientId: ofPatient(about),
      baseline: { ...value, joint: about.joint },
      seen: Number(about.seen),
    }),
};

export const writeMessage = patientForm({
  name: 'message',
  prefix: 'message-',
  fields: [{ name: 'text', kind: 'text', minLength: 1, maxLength: 2000, about: 'Message' }],
  place: '/review',
  taken: 'Sent.',
  send: ({ clinician }, { about, value: { text } }) =>
    clinician.review.write.mutate({ patientId: ofPatient(about), text: String(text ?? '') }),
});

/** Taking it back is another button: here a day is asked for. */
const whenAndWhere: readonly Field[] = bookingFields.map((field) =>
  field.name === 'when' ? { ...field, nullable: false } : field,
);

/** `seen`: the booking the page shows. */
export const bookReview: SentForm = {
  name: 'booking',
  about: ['patientId', 'desk', 'seen'],
  prefix: () => 'booking-',
  fields: () => whenAndWhere,
  page: (about) =>
    deskFrom(about.desk) === 'reception' ? `/reception/${ofPatient(about)}` : reviewOf(about),
  taken: 'Booked.',
  send: (client, { about, value }) =>
    callsFor(client)[deskFrom(about.desk)].book.mutate({
      patientId: ofPatient(about),
      booking: { place: null, ...value },
      seen: nullFrom(about.seen),
    }),
};

const overrideFields: readonly Field[] = [
  { name: 'decision', kind: 'enum', values: decisions, about: say('override.decision') },
  { name: 'reason', kind: 'text', maxLength: 500, about: 'Reason' },
  { name: 'until', kind: 'day', about: say('override.until') },
];

/** `seen`: the newest answer the page shows. */
export const overrideDecision: SentForm = {
  name: 'override',
  about: ['patientId', 'decisionId', 'seen'],
  prefix: (about) => `override-${about.decisionId}-`,
  fields: () => overrideFields,
  page: reviewOf,
  taken: 'Overridden.',
  send: ({ clinician }, { about, value }) =>
    clinician.review.respond.mutate({
      patientId: ofPatient(about),
      response: { decisionId: about.decisionId, reason: '', ...value, kind: 'override' },
      seen: nullFrom(about.seen),
    }),
};
