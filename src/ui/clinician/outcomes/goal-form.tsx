'use client';
/** Setting a goal in the patient's words, or saying how a known one stands. */
import { useRouter } from 'next/navigation';
import { wordsName } from '#api/inputs/posted-form.ts';
import { goalStateWords } from '#core/episode/goals.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { goalState, newGoal } from '../forms/sent/measurements.ts';

const stateChoices = Object.entries(goalStateWords).map(([value, label]) => ({ value, label }));

export const GoalForm = (props: {
  readonly patientId: string;
  /** null = a new goal, which begins as open. */
  readonly goal: string | null;
  /** In the list of goals, which keeps the forms apart. */
  readonly place: number;
}) => {
  const router = useRouter();
  const { patientId, goal, place } = props;
  return (
    <SentFrame
      sent={goal === null ? newGoal : goalState}
      about={goal === null ? { patientId } : { patientId, place: String(place), [wordsName]: goal }}
      clearsTo={{}}
      label={goal === null ? say('goal.set') : 'Save'}
      choices={{ state: stateChoices }}
      hints={{ byDay: say('goal.day-hint') }}
      onTaken={router.refresh}
    />
  );
};
