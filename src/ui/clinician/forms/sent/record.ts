/** Forms about the person and the record: a new patient, a detail, the usual site, two records of one person. */
import type { Field } from '#core/calculations/describe.ts';
import {
  detailChangeFields,
  detailInWords,
  newPatientFields,
  patientDetails,
} from '#core/record/patient-details.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { say as sayAccess } from '#messages/en/staff/access.ts';
import { say as sayPatients } from '#messages/en/staff/patients.ts';
import { say } from '#messages/en/staff/record.ts';
import type { AddedPatient } from '../../answers.ts';
import { callsFor, deskFrom, placeOf } from '../../desk-calls.ts';
import { refusedAt } from '../submit-problems.ts';
import { ofPatient, patientForm, type SentForm } from './sent-form.ts';

type Added = Extract<AddedPatient, { answer: 'added' }>;
type Duplicate = Extract<AddedPatient, { answer: 'possible-duplicate' }>;

/** Whoever looks the same is asked about, in the shape of a question about an unlikely value. */
const asksWhetherSame = ({ found }: Duplicate): Error => {
  const names = found.map(({ person }) =>
    person
      ? `${person.givenName} ${person.familyName}, ${dayInWords(person.birthDay)}`
      : sayPatients('colleagues-patient'),
  );
  const question = `${sayPatients('on-record')} ${names.join('; ')}.`;
  return Object.assign(new Error(question), { data: { questions: [question] } });
};

/** Of a page with scripts only the fields: it shows whoever looks the same with a link to each. */
export const addPatient: SentForm = {
  name: 'new-patient',
  about: ['desk'],
  prefix: () => 'new-',
  fields: () => newPatientFields,
  page: (about) => `/${placeOf[deskFrom(about.desk)]}/new`,
  next: (answer: Added, about) => `/${placeOf[deskFrom(about.desk)]}/${answer.patientId}`,
  taken: sayPatients('added'),
  send: async (client, { about, value: patient, isConfirmed }) => {
    const { add } = callsFor(client)[deskFrom(about.desk)];
    const answer = await add.mutate({ patient, otherThan: [] });
    if (answer.answer === 'added') return answer;
    if (!isConfirmed) throw asksWhetherSame(answer);
    const others = answer.found.map(({ patientId }) => patientId);
    const added = await add.mutate({ patient, otherThan: others });
    if (added.answer !== 'added') throw asksWhetherSame(added);
    return added;
  },
};

export const textDetails = patientDetails.filter((detail) => detail !== 'birthDay');

/** The version seen is known to the page and not asked; a day of birth is asked as a day, and all else as text. */
const detailFields: readonly Field[] = detailChangeFields[0].of.fields.flatMap((field): readonly Field[] => {
  if (field.name === 'seen') return [];
  if (field.name !== 'value') return [field];
  return [
    { ...field, onlyWhen: { field: 'detail', is: textDetails } },
    {
      name: 'birthDay',
      kind: 'day',
      isBirth: true,
      nullable: true,
      about: detailInWords('birthDay'),
      onlyWhen: { field: 'detail', is: ['birthDay'] },
    },
  ];
});

type Seen = readonly { readonly detail: string; readonly seen: number }[];

/** "phone:2_email:1": the version of each detail that the page shows. */
export const seenInText = (details: Seen): string =>
  `v_${details.map(({ detail, seen }) => `${detail}:${seen}`).join('_')}`;

const seenOf = (text: string, detail: unknown): number => {
  const part = text.split('_').find((one) => one.startsWith(`${String(detail)}:`));
  return Number(part?.split(':')[1] ?? 0);
};

export const changeDetail: SentForm = {
  name: 'detail',
  about: ['patientId', 'desk', 'seen'],
  prefix: () => 'detail-',
  fields: () => detailFields,
  page: (about) => `/${placeOf[deskFrom(about.desk)]}/${ofPatient(about)}`,
  taken: say('detail.taken'),
  send: (client, { about, isConfirmed: confirmed, value: { birthDay, value, ...change } }) => {
    const isBirth = change.detail === 'birthDay';
    const seen = seenOf(about.seen ?? '', change.detail);
    const changes = [{ ...change, value: isBirth ? birthDay : value, seen }];
    return callsFor(client)
      [deskFrom(about.desk)].changeDetails.mutate({ patientId: ofPatient(about), changes, confirmed })
      .catch((error: unknown) => {
        throw refusedAt(error, isBirth ? 'birthDay' : 'value');
      });
  },
};

/** The page offers the sites; the procedure knows which there are. */
export const setSite = patientForm({
  name: 'usual-site',
  prefix: 'site-',
  fields: [{ name: 'siteId', kind: 'text', maxLength: 80, about: 'Site' }],
  place: '/access',
  taken: 'Saved.',
  send: ({ clinician }, { about, value }) =>
    clinician.team.setSite.mutate({ patientId: ofPatient(about), siteId: String(value.siteId) }),
});

const reason = { name: 'reason', kind: 'text', minLength: 1, maxLength: 200, about: 'Reason' } as const;
const otherRecord = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength: 64, about }) as const;

export const mergeRecords = patientForm({
  name: 'merge',
  prefix: 'merge-',
  fields: [otherRecord('otherId', sayAccess('other-record-of-this-person')), reason],
  place: '/access',
  taken: sayAccess('merged'),
  send: ({ clinician }, { about, value }) =>
    clinician.merges.merge.mutate({
      patientId: ofPatient(about),
      otherId: String(value.otherId),
      reason: String(value.reason),
    }),
});

export const keepPlan = patientForm({
  name: 'keep-plan',
  prefix: 'keep-',
  fields: [otherRecord('keptId', sayAccess('prescriptions-that-stay')), reason],
  place: '/access',
  taken: sayAccess('other-prescriptions-ended'),
  send: ({ clinician }, { about, value }) =>
    clinician.merges.choosePlan.mutate({
      patientId: ofPatient(about),
      keptId: String(value.keptId),
      reason: String(value.reason),
    }),
});

export const undoMerge: SentForm = {
  name: 'undo-merge',
  about: ['patientId', 'otherId'],
  prefix: (about) => `undo-${about.otherId}-`,
  fields: () => [reason],
  page: (about) => `/patients/${ofPatient(about)}/access`,
  taken: sayAccess('undone'),
  send: ({ clinician }, { about, value }) =>
    clinician.merges.undo.mutate({
      patientId: ofPatient(about),
      otherId: about.otherId ?? '',
      reason: String(value.reason),
    }),
};
