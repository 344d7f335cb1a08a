/** Who may open a record: a colleague added to its care team, and a record of another team opened with a reason. */
import { say } from '#messages/en/staff/access.ts';
import type { AskedForm } from '#ui/account/asked-form.ts';

export const addToTeam: AskedForm = {
  name: 'care-team',
  about: ['patientId'],
  names: () => ['colleague'],
  missing: ({ colleague }) => (colleague ? [] : [{ field: 'colleague', text: say('choose-a-colleague') }]),
  path: 'clinician.team.set',
  input: ({ colleague }, { patientId }) => ({ patientId, userId: colleague, belongs: true }),
  page: ({ patientId }) => `/patients/${patientId}/access`,
};

export const openInEmergency: AskedForm = {
  name: 'emergency-access',
  about: ['patientId'],
  names: () => ['reason'],
  missing: ({ reason = '' }) =>
    reason.trim().length < 10 ? [{ field: 'reason', text: say('write-the-reason') }] : [],
  path: 'clinician.team.open',
  input: ({ reason }, { patientId }) => ({ patientId, reason }),
  page: ({ patientId }) => `/emergency-access/${patientId}`,
  next: ({ patientId }) => `/patients/${patientId}`,
};
