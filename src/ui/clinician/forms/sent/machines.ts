/** Machines of the clinic: one more, and a correction of one. */
import { machineFields } from '#core/clinic/machine.ts';
import { say } from '#messages/en/staff/administration/machines.ts';
import type { SentForm } from './sent-form.ts';

const place = '/administration/machines';

export const addMachine: SentForm = {
  name: 'machine',
  about: [],
  prefix: () => 'machine-',
  fields: () => machineFields,
  page: () => place,
  taken: say('taken'),
  send: ({ admin }, { value: machine }) => admin.machines.add.mutate({ machine }),
};

/** `seen`: the version that the page showed. */
export const correctMachine: SentForm = {
  name: 'machine-correction',
  about: ['machineId', 'seen'],
  prefix: ({ machineId }) => `correct-${machineId}-`,
  fields: () => machineFields,
  page: () => place,
  taken: say('correct.taken'),
  send: ({ admin }, { about: { machineId = '', seen }, value: machine }) =>
    admin.machines.correct.mutate({ machine, machineId, seen: Number(seen) }),
};
