/** A warning sign told by telephone, and a pause of the clinician's own. */
import { pauseFields, signFields } from '#core/danger/danger-fields.ts';
import { say } from '#messages/en/staff/danger.ts';
import { ofPatient, patientForm } from './sent-form.ts';

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
