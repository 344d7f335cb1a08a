/** Forms of the clinic’s templates: saving doses in force as one, and what becomes of it. */
import type { Field } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/prescribing/templates.ts';
import { ofPatient, patientForm, type SentForm } from './sent-form.ts';

const name: Field = { name: 'name', kind: 'text', minLength: 1, maxLength: 80, about: say('name') };

export const saveTemplate = patientForm({
  name: 'save-template',
  prefix: 'template-',
  fields: [
    name,
    {
      name: 'prescriptionIds',
      kind: 'list',
      minItems: 1,
      maxItems: 30,
      of: { name: 'id', kind: 'text', maxLength: 64 },
      about: say('save.which'),
    },
  ],
  place: '/prescriptions',
  taken: say('save.done'),
  send: ({ clinician }, { about, value }) =>
    clinician.templates.save.mutate({
      patientId: ofPatient(about),
      name: String(value.name),
      prescriptionIds: value.prescriptionIds as string[],
    }),
});

const ofTemplate = (
  act: string,
  fields: readonly Field[],
  form: Pick<SentForm, 'send' | 'taken'>,
): SentForm => ({
  ...form,
  name: `${act}-template`,
  about: ['templateId'],
  prefix: (about) => `${act}-${about.templateId}-`,
  fields: () => fields,
  page: () => '/templates',
});

export const renameTemplate = ofTemplate('rename', [name], {
  taken: say('renamed'),
  send: ({ clinician }, { about, value }) =>
    clinician.templates.rename.mutate({ templateId: about.templateId ?? '', name: String(value.name) }),
});

export const withdrawTemplate = ofTemplate('withdraw', [], {
  taken: say('withdraw.done'),
  send: ({ clinician }, { about }) =>
    clinician.templates.withdraw.mutate({ templateId: about.templateId ?? '' }),
});

export const bringBackTemplate = ofTemplate('bring-back', [], {
  taken: say('bring-back.done'),
  send: ({ clinician }, { about }) =>
    clinician.templates.bringBack.mutate({ templateId: about.templateId ?? '' }),
});
