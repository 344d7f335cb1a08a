/** Questionnaires a clinic wrote, who is asked to answer them or the chosen activities at home, and the answers. */
import { sql } from 'drizzle-orm';
import type { OwnQuestion } from '#core/assessment/questionnaires/questionnaire.ts';
import { enteredAs } from '#core/record/entry-words.ts';
import { dayShape, kit, words } from './kit.ts';
import { clinic, patient } from './people.ts';

const ofClinic = () => ({
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  recordedAt: kit.instant('recorded_at'),
  recordedBy: kit.id('recorded_by'),
  byName: kit.text('by_name'),
});

const owned = () => ({
  id: kit.id('id').primaryKey(),
  ...ofClinic(),
  patientId: kit.id('patient_id').references(() => patient.id),
});

export const questionnaireVersion = kit.appendOnly(
  'questionnaire_version',
  {
    id: kit.id('id').primaryKey(),
    ...ofClinic(),
    questionnaireId: kit.id('questionnaire_id'),
    version: kit.whole('version'),
    title: kit.text('title'),
    questions: kit.sharedJson<readonly OwnQuestion[]>('questions'),
  },
  (t) => [
    kit.unique('questionnaire_version_number').on(t.clinicId, t.questionnaireId, t.version),
    kit.check('questionnaire_version_title', sql`length(trim(${t.title})) BETWEEN 1 AND 80`),
    kit.check('questionnaire_version_questions', sql`json_array_length(${t.questions}) BETWEEN 1 AND 12`),
  ],
);

/** From then on it is asked of nobody; its versions and answers stay. */
export const questionnaireRetirement = kit.appendOnly('questionnaire_retirement', {
  questionnaireId: kit.id('questionnaire_id').primaryKey(),
  ...ofClinic(),
});

/** A person is asked to answer at home, from a day on, every so many days. */
export const homeQuestions = kit.appendOnly(
  'home_questions',
  {
    ...owned(),
    /** null = the activities the person chose. */
    questionnaireId: kit.idOrNull('questionnaire_id'),
    fromDay: kit.day('from_day'),
    everyDays: kit.whole('every_days'),
  },
  (t) => [
    kit.index('home_questions_by_patient').on(t.clinicId, t.patientId, t.recordedAt),
    kit.check('home_questions_day', sql`${t.fromDay} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check('home_questions_every', sql`${t.everyDays} BETWEEN 7 AND 84`),
  ],
);

export const homeQuestionsEnd = kit.appendOnly('home_questions_end', {
  homeQuestionsId: kit
    .id('home_questions_id')
    .primaryKey()
    .references(() => homeQuestions.id),
  ...ofClinic(),
  patientId: kit.id('patient_id').references(() => patient.id),
});

/** What was answered in one go, under the id the phone gave it. A null answer was asked and not known. */
export const homeAnswers = kit.appendOnly(
  'home_answers',
  {
    ...owned(),
    homeQuestionsId: kit.id('home_questions_id').references(() => homeQuestions.id),
    entryId: kit.id('entry_id'),
    digest: kit.text('digest'),
    /** Version of the questionnaire that was answered; null = the chosen activities. */
    version: kit.wholeOrNull('version'),
    day: kit.day('day'),
    answers:
      kit.json<readonly { readonly question: string; readonly answer: number | boolean | string | null }[]>(
        'answers',
      ),
    enteredAs: kit.wordOrNull('entered_as', enteredAs),
  },
  (t) => [
    kit.unique('home_answers_entry').on(t.clinicId, t.patientId, t.entryId),
    kit.index('home_answers_by_patient').on(t.clinicId, t.patientId, t.recordedAt),
    kit.index('home_answers_of_questions').on(t.homeQuestionsId),
    kit.check('home_answers_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check(
      'home_answers_entered_as',
      sql`${t.enteredAs} IS NULL OR ${t.enteredAs} IN (${words(enteredAs)})`,
    ),
  ],
);
