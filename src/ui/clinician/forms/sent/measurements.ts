/** Forms of what is measured, asked at home and aimed at. */
import { wordsName } from '#api/inputs/posted-form.ts';
import { measurementForm } from '#core/assessment/measurements/measurement-fields.ts';
import { homeQuestionsFields } from '#core/assessment/questionnaires/home-questions.ts';
import { retestFields, retestStopFields } from '#core/assessment/retest-plan.ts';
import { goalFields } from '#core/episode/goals.ts';
import { effusionFields } from '#core/record/staff-fields.ts';
import { ofPatient, patientForm, type SentForm } from './sent-form.ts';

export const recordMeasurement: SentForm = {
  name: 'measurement',
  about: ['patientId', 'kind'],
  prefix: (about) => `${about.kind}-`,
  fields: (about) => measurementForm(about.kind ?? '')?.fields ?? [],
  page: (about) => `/patients/${ofPatient(about)}/measurements`,
  taken: 'Recorded.',
  send: ({ clinician }, { about, value: measurement, isConfirmed: confirmed }) =>
    clinician.measurements.record.mutate({ patientId: ofPatient(about), measurement, confirmed }),
};

export const recordEffusion = patientForm({
  name: 'effusion',
  prefix: 'effusion-',
  fields: effusionFields,
  place: '/measurements',
  taken: 'Recorded.',
  send: ({ clinician }, { about, value: effusion }) =>
    clinician.measurements.recordEffusion.mutate({ patientId: ofPatient(about), effusion }),
});

export const askAtHome = patientForm({
  name: 'home-questions',
  prefix: 'home-',
  fields: homeQuestionsFields,
  place: '/outcomes',
  taken: 'Saved.',
  send: ({ clinician }, { about, value: ask }) =>
    clinician.homeQuestions.ask.mutate({ patientId: ofPatient(about), ask }),
});

export const planRetest: SentForm = {
  name: 'retest-plan',
  about: ['patientId', 'of'],
  prefix: (about) => `retest-${about.of}-`,
  fields: () => retestFields,
  page: (about) => `/patients/${ofPatient(about)}/outcomes`,
  taken: 'Saved.',
  send: ({ clinician }, { about, value }) =>
    clinician.outcomes.planRetest.mutate({
      patientId: ofPatient(about),
      retest: { everyDays: null, ...value },
    }),
};

export const stopRetest: SentForm = {
  name: 'retest-stop',
  about: ['patientId', 'of'],
  prefix: (about) => `retest-stop-${about.of}-`,
  fields: () => retestStopFields,
  page: (about) => `/patients/${ofPatient(about)}/outcomes`,
  taken: 'Stopped.',
  send: ({ clinician }, { about, value: stop }) =>
    clinician.outcomes.stopRetest.mutate({ patientId: ofPatient(about), measure: about.of ?? '', stop }),
};

const goalFieldsWithout = (left: string) => goalFields.filter((field) => field.name !== left);
const ofKnownGoal = goalFieldsWithout('goal');

export const newGoal = patientForm({
  name: 'new-goal',
  prefix: 'goal-new-',
  fields: goalFieldsWithout('state'),
  place: '/outcomes',
  taken: 'Saved.',
  send: ({ clinician }, { about, value }) =>
    clinician.outcomes.setGoal.mutate({
      patientId: ofPatient(about),
      goal: { byDay: null, note: null, ...value, state: 'open' },
    }),
});

/** A goal is known by its words; its place in the list keeps the fields of several apart. */
export const goalState: SentForm = {
  name: 'goal-state',
  about: ['patientId', 'place', wordsName],
  prefix: (about) => `goal-${about.place}-`,
  fields: () => ofKnownGoal,
  page: (about) => `/patients/${ofPatient(about)}/outcomes`,
  taken: 'Saved.',
  send: ({ clinician }, { about, value }) =>
    clinician.outcomes.setGoal.mutate({
      patientId: ofPatient(about),
      goal: { byDay: null, note: null, ...value, goal: about[wordsName] },
    }),
};
