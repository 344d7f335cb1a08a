/** What a person is asked to answer at home, and what was answered. Nothing of it reaches the rules, a dose or the plan. */
import { z } from 'zod';
import { Problem } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import {
  activitiesAsked,
  chosenActivities,
  dueFrom,
  homeQuestionsConsistent,
  homeQuestionsFields,
} from '#core/assessment/questionnaires/home-questions.ts';
import { homeAnswersRead } from '#data/assessment/home-answers.ts';
import { askAtHome, endHomeQuestions, homeQuestionsOf } from '#data/assessment/home-questions.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { questionnairesOf } from '#data/assessment/questionnaires.ts';
import { madeId, nothing } from '../../outputs.ts';

export const homeQuestionsRouter = router({
  get: recordProcedure.query(async ({ ctx: { access, patient } }) => {
    const questionnaires = await questionnairesOf(access);
    const { standing: answers } = await homeAnswersRead(access, patient.id);
    const asked = await homeQuestionsOf(access, patient.id);
    return {
      offered: questionnaires
        .filter(({ retired }) => retired === null)
        .map(({ questionnaireId, title, questions }) => ({
          questionnaireId,
          title,
          count: questions.length,
        })),
      activities: activitiesAsked(await measurementsOf(access, patient.id)),
      asked: asked.map((row) => {
        const of = questionnaires.find(({ questionnaireId }) => questionnaireId === row.questionnaireId);
        const own = answers.filter(({ homeQuestionsId }) => homeQuestionsId === row.id);
        return {
          ...row,
          /** null = the activities the person chose. */
          title: of?.title ?? null,
          isRetired: of?.retired != null,
          dueFrom: dueFrom(
            row,
            own.map(({ day }) => day),
          ),
          answers: own.map(({ id, day, version, enteredAs, answers: given }) => ({
            id,
            day,
            version,
            enteredAs,
            given,
          })),
        };
      }),
    };
  }),

  ask: recordProcedure
    .input(z.object({ ask: z.unknown() }))
    .output(madeId)
    .mutation(async ({ ctx: { access, patient }, input }) => {
      const { questions, fromDay, everyDays } = checked(homeQuestionsFields, input.ask, (row) =>
        homeQuestionsConsistent(row, access.day),
      );
      const isOfActivities = questions === chosenActivities;
      if (isOfActivities && activitiesAsked(await measurementsOf(access, patient.id)).length === 0)
        throw new Problem(
          'refused',
          'This person has no activity on record yet. Record what they chose under Measurements first.',
        );
      const isOffered = (await questionnairesOf(access)).some(
        ({ questionnaireId, retired }) => questionnaireId === questions && !retired,
      );
      if (!isOfActivities && !isOffered)
        throw new Problem('refused', 'Choose what is asked from the list. It may have been retired since.');
      const questionnaireId = isOfActivities ? null : questions;
      const id = await askAtHome(access, patient.id, { questionnaireId, fromDay, everyDays });
      if (id === null)
        throw new Problem('conflict', 'This person is asked that already. End it first to ask it otherwise.');
      return id;
    }),

  end: recordProcedure
    .input(z.object({ homeQuestionsId: z.string().min(1).max(64) }))
    .output(nothing)
    .mutation(async ({ ctx: { access, patient }, input }) => {
      if (!(await endHomeQuestions(access, patient.id, input.homeQuestionsId)))
        throw new Problem('not-found', 'This person is not asked that, or no longer. Reload the page.');
    }),
});
