/** What was imported, taken back. */
import { say } from '#messages/en/staff/exchange/imports.ts';
import { ofPatient, type SentForm } from './sent-form.ts';

const about = say('reason-for-taking-back');

export const undoImport: SentForm = {
  name: 'undo-import',
  about: ['patientId', 'importId'],
  prefix: ({ importId }) => `undo-${importId}-`,
  fields: () => [{ name: 'reason', kind: 'text', minLength: 1, maxLength: 200, about }],
  page: (subject) => `/patients/${ofPatient(subject)}/imports`,
  taken: say('taken-back'),
  send: ({ clinician }, { about: subject, value }) =>
    clinician.imports.undo.mutate({
      patientId: ofPatient(subject),
      importId: subject.importId ?? '',
      reason: String(value.reason),
    }),
};
