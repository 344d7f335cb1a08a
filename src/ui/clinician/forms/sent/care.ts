/** Small forms of the care page, each of its descriptor; an episode of care and a visit. */
import type { Field } from '#core/calculations/describe.ts';
import { limitFields } from '#core/episode/care-fields.ts';
import { episodeChangeFields, episodeFields } from '#core/episode/episode-fields.ts';
import { eventFields } from '#core/episode/event-fields.ts';
import { homeCheckFields, observedSessionFields, visitFields } from '#core/episode/visit-fields.ts';
import { say } from '#messages/en/staff/episode.ts';
import { linesOf } from '../typed.ts';
import { ofPatient, patientForm, type SentForm } from './sent-form.ts';

const carePage = { place: '/care', taken: 'Recorded.' } as const;

export const careForms = {
  watch: patientForm({
    ...carePage,
    name: 'supervised-session',
    prefix: 'watch-',
    fields: observedSessionFields,
    send: ({ clinician }, { about, value: session }) =>
      clinician.visits.watch.mutate({ patientId: ofPatient(about), session }),
  }),
  check: patientForm({
    ...carePage,
    name: 'home-check',
    prefix: 'check-',
    fields: homeCheckFields,
    send: ({ clinician }, { about, value: check }) =>
      clinician.visits.checkHome.mutate({ patientId: ofPatient(about), check }),
  }),
  limit: patientForm({
    ...carePage,
    name: 'limit',
    prefix: 'limit-',
    fields: limitFields,
    send: ({ clinician }, { about, value: limit }) =>
      clinician.care.addLimit.mutate({ patientId: ofPatient(about), limit }),
  }),
  event: patientForm({
    ...carePage,
    name: 'event',
    prefix: 'event-',
    fields: eventFields,
    send: ({ clinician }, { about, value: event }) =>
      clinician.care.addEvent.mutate({ patientId: ofPatient(about), event }),
  }),
} as const;

const linesFrom = (text: unknown) => linesOf(typeof text === 'string' ? text : '');

/** Typed a line each, so that several stand in one field. */
const inLines = (field: { readonly name: string; readonly about?: string }): Field => ({
  name: field.name,
  kind: 'text',
  maxLength: 900,
  optional: field.name !== 'diagnoses',
  about: field.about ?? field.name,
});

const openingFields: readonly Field[] = [
  ...episodeFields.map((field): Field => {
    const isTyped = field.name === 'diagnoses' || field.name === 'goals' || field.name === 'contacts';
    return isTyped ? inLines(field) : field;
  }),
  { name: 'reason', kind: 'text', minLength: 1, maxLength: 300, about: say('reason-for-opening') },
];

/** Who they are; name; telephone. */
const contactsFrom = (text: unknown) =>
  linesFrom(text).map((line) => {
    const [role = '', name = '', phone = ''] = line.split(';').map((part) => part.trim());
    return { role, name, phone: phone || null };
  });

export const openEpisode = patientForm({
  name: 'episode',
  prefix: 'episode-',
  fields: openingFields,
  place: '/care/episode',
  taken: 'Opened.',
  send: ({ clinician }, { about, value }) => {
    const { reason, contacts, diagnoses, goals, ...row } = value;
    const episode = {
      ...row,
      diagnoses: linesFrom(diagnoses),
      goals: linesFrom(goals),
      contacts: contactsFrom(contacts),
    };
    return clinician.episodes.open.mutate({
      patientId: ofPatient(about),
      episode,
      reason: String(reason ?? ''),
    });
  },
});

/** Those present are typed a line each; nobody else may be there. */
const beginningFields: readonly Field[] = visitFields.map((field) =>
  field.name === 'present'
    ? { name: 'present', kind: 'text', maxLength: 700, optional: true, about: field.about }
    : field,
);

export const beginVisit = patientForm({
  name: 'visit',
  prefix: 'visit-',
  fields: beginningFields,
  place: '/care/appointments',
  taken: 'Begun.',
  send: ({ clinician }, { about, value: { present, ...visit } }) =>
    clinician.visits.begin.mutate({
      patientId: ofPatient(about),
      visit: { ...visit, present: linesFrom(present) },
    }),
});

const ofBreak = { field: 'to', is: ['on-break'] };
const whenOnBreak = (field: Field): Field => {
  if (field.name === 'breakKind') return { ...field, nullable: false, onlyWhen: ofBreak };
  return field.name === 'expectedBack' ? { ...field, onlyWhen: ofBreak } : field;
};
const changeFields = episodeChangeFields.filter(({ name }) => name !== 'episodeId').map(whenOnBreak);

export const changeEpisode: SentForm = {
  name: 'episode-change',
  about: ['patientId', 'episodeId'],
  prefix: (about) => `change-${about.episodeId}-`,
  fields: () => changeFields,
  page: (about) => `/patients/${ofPatient(about)}/care/episode`,
  taken: '',
  send: ({ clinician }, { about, value }) =>
    clinician.episodes.change.mutate({
      patientId: ofPatient(about),
      change: { breakKind: null, expectedBack: null, ...value, episodeId: about.episodeId },
    }),
};
