/** Forms of the prescriptions in force: ending one, steps approved ahead. */
import { preApprovalFields } from '#core/episode/care-fields.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import { ofPatient, type SentForm } from './sent-form.ts';

const page: SentForm['page'] = (about) => `/patients/${ofPatient(about)}/prescriptions`;

export const endPrescription: SentForm = {
  name: 'end-prescription',
  about: ['patientId', 'prescriptionId'],
  prefix: (about) => `end-${about.prescriptionId}-`,
  fields: () => [{ name: 'reason', kind: 'text', minLength: 1, maxLength: 200, about: say('end.reason') }],
  page,
  taken: 'Ended.',
  send: ({ clinician }, { about, value }) =>
    clinician.prescriptions.end.mutate({
      patientId: ofPatient(about),
      prescriptionId: about.prescriptionId ?? '',
      reason: String(value.reason ?? ''),
    }),
};

const aheadFields = preApprovalFields.filter((field) => field.name !== 'itemId');

export const approveStepsAhead: SentForm = {
  name: 'approve-ahead',
  about: ['patientId', 'itemId'],
  prefix: (about) => `ahead-${about.itemId}-`,
  fields: () => aheadFields,
  page,
  taken: 'Signed.',
  send: ({ clinician }, { about, value }) =>
    clinician.care.preApprove.mutate({
      patientId: ofPatient(about),
      preApproval: { ...value, itemId: about.itemId },
    }),
};
