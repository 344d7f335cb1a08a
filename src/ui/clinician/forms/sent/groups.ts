/** Group hours: planned, corrected, cancelled or entered in error; who joins one and who leaves it. */
import { type GroupState, groupHourFields, groupReasonFields } from '#core/clinic/group-hour.ts';
import { say } from '#messages/en/staff/groups/hours.ts';
import type { SentForm } from './sent-form.ts';

const rosterOf = (hourId: string | undefined): string => `/groups/${hourId ?? ''}/roster`;

export const planGroupHour: SentForm = {
  name: 'group-hour',
  about: [],
  prefix: () => 'group-',
  fields: () => groupHourFields,
  page: () => '/groups',
  next: (hourId: never) => rosterOf(hourId),
  taken: say('plan.taken'),
  send: ({ clinician }, { value: hour }) => clinician.groupHours.plan.mutate({ hour }),
};

/** `seen`: the version that the page showed. */
export const correctGroupHour: SentForm = {
  name: 'group-hour-correction',
  about: ['hourId', 'seen'],
  prefix: () => 'correct-',
  fields: () => groupHourFields,
  page: ({ hourId }) => rosterOf(hourId),
  taken: say('correct.taken'),
  send: ({ clinician }, { about: { hourId = '', seen }, value: hour }) =>
    clinician.groupHours.correct.mutate({ hourId, seen: Number(seen), hour }),
};

const becomes = (name: string, state: GroupState, taken: string): SentForm => ({
  name: `group-hour-${name}`,
  about: ['hourId'],
  prefix: () => `${name}-`,
  fields: () => groupReasonFields,
  page: ({ hourId }) => rosterOf(hourId),
  taken,
  send: ({ clinician }, { about: { hourId = '' }, value: { reason } }) =>
    clinician.groupHours.change.mutate({ hourId, state, reason }),
});

export const cancelGroupHour = becomes('cancel', 'cancelled', say('cancel.taken'));
export const groupHourInError = becomes('error', 'entered-in-error', say('error.taken'));
export const planGroupHourAgain = becomes('again', 'planned-again', say('again.taken'));

/** The page offers the people; the procedure knows which there are. */
export const joinGroup: SentForm = {
  name: 'group-join',
  about: ['hourId'],
  prefix: () => 'join-',
  fields: () => [{ name: 'person', kind: 'text', minLength: 1, maxLength: 64, about: say('add.who') }],
  page: ({ hourId }) => rosterOf(hourId),
  taken: say('add.taken'),
  send: ({ clinician }, { about: { hourId = '' }, value: { person } }) =>
    clinician.groupHours.add.mutate({ hourId, patientId: String(person) }),
};

export const leaveGroup: SentForm = {
  name: 'group-leave',
  about: ['hourId', 'patientId'],
  prefix: ({ patientId }) => `leave-${patientId}-`,
  fields: () => [],
  page: ({ hourId }) => rosterOf(hourId),
  taken: say('remove.taken'),
  send: ({ clinician }, { about: { hourId = '', patientId = '' } }) =>
    clinician.groupHours.remove.mutate({ hourId, patientId }),
};
