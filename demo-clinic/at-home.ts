/** Questions answered at home: the clinic's own three, our invention, and the activities somebody chose. */
import { activitiesAsked } from '#core/assessment/questionnaires/home-questions.ts';
import type { Questionnaire } from '#core/assessment/questionnaires/questionnaire.ts';
import type { Access } from '#data/access.ts';
import { storeHomeAnswers } from '#data/assessment/home-answers.ts';
import { askAtHome, homeQuestionsOf } from '#data/assessment/home-questions.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { questionnairesOf, writeQuestionnaire } from '#data/assessment/questionnaires.ts';
import type { Act, AnswersAtHome } from './story.ts';

const ownQuestionnaire: Questionnaire = {
  title: 'Nights and getting about',
  questions: [
    {
      kind: 'score',
      text: 'How well did you sleep in the last seven nights?',
      low: 'hardly at all',
      high: 'right through',
    },
    { kind: 'yes-no', text: 'Were you out of the house on most days?', low: null, high: null },
    { kind: 'words', text: 'What would you like to manage next?', low: null, high: null },
  ],
};

export const writeOwnQuestionnaire = (access: Access) => writeQuestionnaire(access, null, ownQuestionnaire);

export const asksAtHome = async (
  access: Access,
  patientId: string,
  { what, everyDays }: Extract<Act, { does: 'ask-at-home' }>,
): Promise<void> => {
  const [own] = await questionnairesOf(access);
  if (!own) throw new RangeError('The demo clinic has written no questionnaire.');
  const questionnaireId = what === 'activities' ? null : own.questionnaireId;
  await askAtHome(access, patientId, { questionnaireId, fromDay: access.day, everyDays });
};

/** The newest request is answered, in the order of its questions. */
export const answerAtHome = async (
  access: Access,
  patientId: string,
  { given }: AnswersAtHome,
): Promise<void> => {
  const asked = (await homeQuestionsOf(access, patientId)).at(-1);
  if (!asked) throw new RangeError(`${patientId}: nothing is asked at home`);
  const own = (await questionnairesOf(access)).find((row) => row.questionnaireId === asked.questionnaireId);
  const texts = own
    ? own.questions.map(({ text }) => text)
    : activitiesAsked(await measurementsOf(access, patientId));
  if (texts.length !== given.length)
    throw new RangeError(`${patientId}: ${texts.length} questions are asked`);
  await storeHomeAnswers(access, patientId, {
    homeQuestionsId: asked.id,
    entryId: `home-${access.day}`,
    version: own?.version ?? null,
    day: access.day,
    answers: texts.map((question, place) => ({ question, answer: given[place] ?? null })),
    enteredAs: null,
  });
};
