/** Incidents of the clinic: written down, corrected, closed and opened again. */
import type { PostedTexts } from '#api/inputs/posted-form.ts';
import { incidentFields, incidentReasonFields } from '#core/clinic/incident.ts';
import { say } from '#messages/en/staff/administration/incidents.ts';
import { nullFrom, type SentForm } from './sent-form.ts';

const place = '/incidents';

/** Stands for the patient it was about before. */
const same = 'same';

export const orSame = (id: string | undefined): string => id ?? same;

const about = ({ patientId }: PostedTexts) => ({
  patientId: patientId === same ? undefined : nullFrom(patientId),
});

/** `patientId`: none where no patient is named. */
export const writeIncident: SentForm = {
  name: 'incident',
  about: ['patientId'],
  prefix: () => 'incident-',
  fields: () => incidentFields,
  page: ({ patientId }) => (nullFrom(patientId) ? `${place}?patient=${patientId}` : place),
  taken: say('taken'),
  send: ({ clinician }, { about: { patientId }, value: incident }) =>
    clinician.incidents.record.mutate({ incident, patientId: nullFrom(patientId) }),
};

/** `seen`: the version that the page showed. */
export const correctIncident: SentForm = {
  name: 'incident-correction',
  about: ['incidentId', 'seen', 'patientId'],
  prefix: () => 'correct-',
  fields: () => incidentFields,
  page: ({ incidentId }) => `${place}?correct=${incidentId}`,
  next: () => place,
  taken: say('correct.taken'),
  send: ({ clinician }, { about: of, value: incident }) =>
    clinician.incidents.correct.mutate({
      ...about(of),
      incident,
      incidentId: of.incidentId ?? '',
      seen: Number(of.seen),
    }),
};

const ofIncident = (act: 'close' | 'reopen', taken: string): SentForm => ({
  name: `incident-${act}`,
  about: ['incidentId'],
  prefix: (of) => `${act}-${of.incidentId}-`,
  fields: () => incidentReasonFields,
  page: () => place,
  taken,
  send: ({ clinician }, { about: of, value: { reason } }) =>
    clinician.incidents[act].mutate({ incidentId: of.incidentId ?? '', reason }),
});

export const closeIncident: SentForm = ofIncident('close', say('close.done'));
export const reopenIncident: SentForm = ofIncident('reopen', say('reopen.done'));
