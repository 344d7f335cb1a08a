'use client';
/** Ends what a person is asked at home, once it was asked whether it is meant. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { say } from '#messages/en/staff/outcomes.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

interface Props {
  readonly patientId: string;
  readonly homeQuestionsId: string;
  readonly title: string;
}

export const EndHomeQuestions = ({ title, ...asked }: Props) => {
  const router = useRouter();
  const [isSure, setSure] = useState(false);
  const id = `end-${asked.homeQuestionsId}`;
  const submit = useSubmit('', id);
  const end = () =>
    void submit.send([], async () => {
      await client.clinician.homeQuestions.end.mutate(asked);
      router.refresh();
    });
  return (
    <>
      <ErrorSummary problems={submit.problems} />
      {isSure ? (
        <ConfirmQuestion
          question={say('home.end-question', { title })}
          yes={say('home.end-yes')}
          no={say('home.end-no')}
          onYes={end}
          onNo={() => setSure(false)}
        />
      ) : (
        <Button id={id} tone="quiet" onClick={() => setSure(true)}>
          {say('home.end')}
          <span className="visually-hidden">: {title}</span>
        </Button>
      )}
    </>
  );
};
