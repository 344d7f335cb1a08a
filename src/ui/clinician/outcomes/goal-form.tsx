'use client';
/** Setting a goal in the patient's words, or saying how a known one stands. */
import { useRouter } from 'next/navigation';
import { goalFields, goalStateWords } from '#core/episode/goals.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

const stateChoices = Object.entries(goalStateWords).map(([value, label]) => ({ value, label }));

export const GoalForm = (props: {
  readonly patientId: string;
  /** null = a new goal, which begins as open. */
  readonly goal: string | null;
  readonly prefix: string;
}) => {
  const router = useRouter();
  const { patientId, goal } = props;
  const left = goal === null ? 'state' : 'goal';
  return (
    <FormFrame
      prefix={props.prefix}
      fields={goalFields.filter((field) => field.name !== left)}
      clearsTo={{}}
      label={goal === null ? say('goal.set') : 'Save'}
      taken="Saved."
      choices={{ state: stateChoices }}
      hints={{ byDay: say('goal.day-hint') }}
      send={async (value) => {
        const given = goal === null ? { state: 'open' } : { goal };
        await client.clinician.outcomes.setGoal.mutate({
          patientId,
          goal: { byDay: null, note: null, ...value, ...given },
        });
        router.refresh();
      }}
    />
  );
};
