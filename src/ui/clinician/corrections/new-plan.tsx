'use client';
/** The plan as it would be after a correction, looked at before it counts. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { say } from '#messages/en/staff/corrections.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import type { NewPlan as Plan } from '../answers.ts';
import { client } from '../client.ts';
import { doseInWords } from '../dose-words.ts';
import { useSubmit } from '../forms/use-submit.ts';
import { decisionStatus, todayInWords } from '../words.ts';

const lineOf = ({ title, dose, decision, today, inTheWay }: Plan[number]): string => {
  const decided = decision === null ? say('no-decision') : decisionStatus[decision].word;
  const start = `${title}, ${doseInWords(dose)}: ${decided}`;
  return inTheWay.length > 0 ? `${start}. ${inTheWay.join(' ')}` : `${start}; ${todayInWords[today]}.`;
};

export const NewPlan = (props: { readonly patientId: string; readonly correctionId: string }) => {
  const router = useRouter();
  const [plan, setPlan] = useState<Plan | null>(null);
  const id = `plan-${props.correctionId}`;
  const submit = useSubmit('', id);
  const { corrections } = client.clinician;
  const look = () => submit.send([], async () => setPlan(await corrections.planOnceSeen.query(props)));
  const agree = () =>
    submit.send([], async () => {
      await corrections.acknowledgePlan.mutate(props);
      router.refresh();
    });
  return (
    <div className="stack-close">
      <ErrorSummary problems={submit.problems} />
      {plan === null ? (
        <Button id={id} onClick={() => void look()}>
          {say('show-the-new-plan')}
        </Button>
      ) : (
        <>
          <ul>
            {plan.map((line) => (
              <li key={line.itemId}>{lineOf(line)}</li>
            ))}
          </ul>
          {plan.length === 0 ? <p>{say('no-prescription-is-in-force')}</p> : null}
          <Button id={id} onClick={() => void agree()}>
            {say('i-have-seen-this-plan')}
          </Button>
        </>
      )}
    </div>
  );
};
