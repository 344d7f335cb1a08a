'use client';
/** Asking a person to answer at home, from a day on, every so many days. */
import { useRouter } from 'next/navigation';
import { chosenActivities, proposedEveryDays } from '#core/assessment/questionnaires/home-questions.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import type { HomeQuestionsAnswer } from '../answers.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { askAtHome } from '../forms/sent/measurements.ts';

interface Props extends Pick<HomeQuestionsAnswer, 'offered' | 'activities'> {
  readonly patientId: string;
  readonly day: Day;
}

export const AskAtHomeForm = ({ patientId, day, offered, activities }: Props) => {
  const router = useRouter();
  const ofActivities = say('home.offered', { title: say('home.activities'), count: activities.length });
  return (
    <SentFrame
      sent={askAtHome}
      about={{ patientId }}
      start={{ fromDay: day, everyDays: String(proposedEveryDays) }}
      label={say('home.ask-save')}
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
      onTaken={router.refresh}
    />
  );
};
