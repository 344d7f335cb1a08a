'use client';
/** Asking a person to answer at home, from a day on, every so many days. */
import { useRouter } from 'next/navigation';
import {
  chosenActivities,
  homeQuestionsFields,
  proposedEveryDays,
} from '#core/assessment/questionnaires/home-questions.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import type { HomeQuestionsAnswer } from '../answers.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

interface Props extends Pick<HomeQuestionsAnswer, 'offered' | 'activities'> {
  readonly patientId: string;
  readonly day: Day;
}

export const AskAtHomeForm = ({ patientId, day, offered, activities }: Props) => {
  const router = useRouter();
  const ofActivities = say('home.offered', { title: say('home.activities'), count: activities.length });
  return (
    <FormFrame
      prefix="home-"
      fields={homeQuestionsFields}
      start={{ fromDay: day, everyDays: String(proposedEveryDays) }}
      label={say('home.ask-save')}
      taken="Saved."
      choices={{
        questions: [
          ...(activities.length > 0 ? [{ value: chosenActivities, label: ofActivities }] : []),
          ...offered.map(({ questionnaireId, title, count }) => ({
            value: questionnaireId,
            label: say('home.offered', { title, count }),
          })),
        ],
      }}
      hints={{ everyDays: say('home.every-hint') }}
      send={async (ask) => {
        await client.clinician.homeQuestions.ask.mutate({ patientId, ask });
        router.refresh();
      }}
    />
  );
};
