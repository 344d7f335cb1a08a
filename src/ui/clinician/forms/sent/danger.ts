/** A warning sign told by telephone, a contact, a pause of the clinician's own, its follow-up and its end. */
import type { Field } from '#core/calculations/describe.ts';
import { contactFields, pauseFields, signFields } from '#core/danger/danger-fields.ts';
import { say } from '#messages/en/staff/danger.ts';
import { say as sayHandover } from '#messages/en/staff/handover.ts';
import { listFrom, ofPatient, patientForm, type SentForm } from './sent-form.ts';

const place = '/warning-signs';

export const reportSign = patientForm({
  name: 'warning-sign',
  prefix: 'sign-',
  fields: signFields,
  place,
  taken: say('sign-recorded'),
  send: ({ clinician }, { about, value }) =>
    clinician.danger.report.mutate({
      patientId: ofPatient(about),
      sign: { joint: null, remark: null, ...value },
    }),
});

export const pause = patientForm({
  name: 'pause',
  prefix: 'pause-',
  fields: pauseFields,
  place,
  taken: 'Paused.',
  send: ({ clinician }, { about, value }) =>
    clinician.danger.pause.mutate({
      patientId: ofPatient(about),
      pause: { joint: null, until: null, ...value },
    }),
});

/** Asked of who was reached, or of when it is tried again. */
const askedOfContact = (name: string): Partial<Field> => {
  const whenReached = { field: 'reached', is: ['patient', 'carer'] };
  if (name === 'found' || name === 'advised') return { nullable: false, onlyWhen: whenReached };
  if (name === 'referredTo') return { onlyWhen: whenReached };
  return name === 'againInHours' ? { nullable: false, onlyWhen: { field: 'reached', is: ['nobody'] } } : {};
};

const saidOfContact = contactFields
  .filter(({ name }) => name !== 'signIds' && name !== 'decisionIds')
  .map((field) => ({ ...field, ...askedOfContact(field.name) }) as Field);

const unsaid = { found: null, advised: null, referredTo: null, againInHours: null };

/** Prefixed by the patient: several may stand on one page. */
export const recordContact: SentForm = {
  name: 'contact',
  about: ['patientId', 'signIds', 'decisionIds'],
  prefix: (about) => `contact-${ofPatient(about)}-`,
  fields: () => saidOfContact,
  page: (about) => `/patients/${ofPatient(about)}${place}`,
  taken: '',
  send: ({ clinician }, { about, value }) =>
    clinician.danger.recordContact.mutate({
      patientId: ofPatient(about),
      contact: {
        signIds: listFrom(about.signIds),
        decisionIds: listFrom(about.decisionIds),
        ...unsaid,
        ...value,
      },
    }),
};

const itemIds: Field = {
  name: 'itemIds',
  kind: 'list',
  minItems: 1,
  about: say('exercises-to-resume'),
  of: { name: 'itemId', kind: 'text', maxLength: 64 },
};
const reason: Field = { name: 'reason', kind: 'text', minLength: 1, maxLength: 300, about: 'Reason' };

/** `holds`: whether it holds exercises; without one the pause as a whole is ended. */
export const resumePause: SentForm = {
  name: 'resume',
  about: ['patientId', 'pauseId', 'holds'],
  prefix: (about) => `resume-${about.pauseId}-`,
  fields: (about) => (about.holds === 'yes' ? [itemIds, reason] : [reason]),
  page: (about) => `/patients/${ofPatient(about)}${place}`,
  taken: '',
  send: ({ clinician }, { about, value }) =>
    clinician.danger.resume.mutate({
      patientId: ofPatient(about),
      pauseId: about.pauseId ?? '',
      itemIds: (value.itemIds ?? []) as string[],
      reason: String(value.reason),
    }),
};

const followUpFields: readonly Field[] = [
  { name: 'ownerId', kind: 'text', maxLength: 64, optional: true, about: sayHandover('who-follows-it-up') },
  { name: 'until', kind: 'day', about: 'Until' },
];

/** Without a name it is whoever sends it. */
export const followUpPause: SentForm = {
  name: 'follow-up',
  about: ['patientId', 'decisionId'],
  prefix: (about) => `pause-${about.decisionId}-`,
  fields: () => followUpFields,
  page: (about) => `/patients/${ofPatient(about)}/handover`,
  taken: '',
  send: ({ clinician }, { about, value }) =>
    clinician.handover.ownPause.mutate({
      patientId: ofPatient(about),
      decisionId: about.decisionId ?? '',
      until: String(value.until),
      ownerId: typeof value.ownerId === 'string' ? value.ownerId : null,
    }),
};
