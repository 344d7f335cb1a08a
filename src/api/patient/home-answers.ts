/** Answers given at home to what the clinic asks now and then: kept once each, and read by people alone. */
import { z } from 'zod';
import { answerFits, type OwnQuestion } from '#core/assessment/questionnaires/questionnaire.ts';
import { carers } from '#core/record/entry-words.ts';
import { earlierDay, isDay } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { storeHomeAnswers } from '#data/assessment/home-answers.ts';
import { type HomeQuestions, homeQuestionsOf } from '#data/assessment/home-questions.ts';
import { measurementsOnRecord } from '#data/assessment/measurements.ts';
import { questionnaireVersionsOf } from '#data/assessment/questionnaires.ts';
import { refusalText } from '#messages/refusals.ts';
import { Problem } from '../errors.ts';

const homeAnswersFields = z.object({
  entryId: z.uuid(),
  day: z.string().refine(isDay),
  homeQuestionsId: z.string().min(1).max(64),
  version: z.number().int().min(1).nullable(),
  answers: z
    .array(
      z.object({
        question: z.string().min(1).max(300),
        answer: z.union([z.number(), z.boolean(), z.string(), z.null()]),
      }),
    )
    .min(1)
    .max(40),
  enteredAs: z.enum(carers).nullable().optional(),
});

type Sent = z.infer<typeof homeAnswersFields>;
type Question = Pick<OwnQuestion, 'kind' | 'text'>;

/** As they stood in the version that was answered; activities as any that was ever rated. */
const questionsOf = async (
  access: Access,
  patientId: string,
  { questionnaireId }: HomeQuestions,
  { version, answers }: Sent,
): Promise<readonly Question[]> => {
  if (questionnaireId !== null) {
    const versions = await questionnaireVersionsOf(access);
    const own = versions.find((row) => row.questionnaireId === questionnaireId && row.version === version);
    return own?.questions ?? [];
  }
  const rated = (await measurementsOnRecord(access, patientId)).flatMap((row) =>
    row.kind === 'patient-chosen-activity' ? [row.activity] : [],
  );
  const names = new Set(answers.map(({ question }) => question));
  return version === null
    ? rated.filter((name) => names.delete(name)).map((text) => ({ kind: 'score', text }))
    : [];
};

const fits = (questions: readonly Question[], answers: Sent['answers']): boolean =>
  questions.length === answers.length &&
  questions.every(({ kind, text }) =>
    answers.some(({ question, answer }) => question === text && answerFits(kind, answer)),
  );

/** Out of a phone's queue; an ended one is still taken, for it was answered while it was asked. */
export const takeHomeAnswers = async (
  access: Access,
  patientId: string,
  entry: unknown,
): Promise<'stored' | 'known' | 'conflict'> => {
  const { data } = homeAnswersFields.safeParse(entry);
  const asked = (await homeQuestionsOf(access, patientId)).find(({ id }) => id === data?.homeQuestionsId);
  if (!data || !asked || !fits(await questionsOf(access, patientId, asked, data), data.answers))
    throw new Problem('refused', refusalText('request-unread'));
  // A phone abroad may be a day ahead; no answer was given after it arrived.
  const day = earlierDay(data.day, access.day);
  return storeHomeAnswers(access, patientId, { ...data, day, enteredAs: data.enteredAs ?? null });
};
