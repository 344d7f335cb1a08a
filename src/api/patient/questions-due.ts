/** What the clinic asks now and then and is due, with its questions, for the day's page. */
import {
  activitiesAsked,
  holdsQuestionsBack,
  isDue,
} from '#core/assessment/questionnaires/home-questions.ts';
import type { Plan } from '#core/plan/plan.ts';
import type { Access } from '#data/access.ts';
import { homeAnswersRead } from '#data/assessment/home-answers.ts';
import { type HomeQuestions, homeQuestionsOf } from '#data/assessment/home-questions.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { questionnairesOf } from '#data/assessment/questionnaires.ts';
import type { QuestionsDue, TodayView } from './today-view.ts';

const questionsFor = async (
  access: Access,
  patientId: string,
  { questionnaireId }: HomeQuestions,
): Promise<Pick<QuestionsDue, 'title' | 'version' | 'questions'> | null> => {
  if (questionnaireId === null) {
    const activities = activitiesAsked(await measurementsOf(access, patientId));
    const questions = activities.map((text) => ({ kind: 'activity', text }) as const);
    return questions.length === 0 ? null : { title: null, version: null, questions };
  }
  const own = (await questionnairesOf(access)).find((row) => row.questionnaireId === questionnaireId);
  return own && !own.retired ? { title: own.title, version: own.version, questions: own.questions } : null;
};

/** Nothing at all where nothing is due. */
export const questionsDueView = async (
  access: Access,
  patientId: string,
  plan: Plan,
  isQuiet: boolean,
): Promise<Pick<TodayView, 'questionsDue'>> => {
  const running = (await homeQuestionsOf(access, patientId)).filter(({ ended }) => ended === null);
  if (running.length === 0 || isQuiet || holdsQuestionsBack(plan)) return {};
  const { known, standing } = await homeAnswersRead(access, patientId);
  const questionsDue: QuestionsDue[] = [];
  for (const asked of running) {
    const isOfIt = ({ homeQuestionsId }: { readonly homeQuestionsId: string }) =>
      homeQuestionsId === asked.id;
    const answeredOn = standing.filter(isOfIt).map(({ day }) => day);
    if (!isDue(asked, answeredOn, access.day)) continue;
    const found = await questionsFor(access, patientId, asked);
    const knownEntryIds = known.filter(isOfIt).map(({ entryId }) => entryId);
    if (found) questionsDue.push({ homeQuestionsId: asked.id, ...found, knownEntryIds });
  }
  return questionsDue.length === 0 ? {} : { questionsDue };
};
