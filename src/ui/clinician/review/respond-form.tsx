'use client';
/** Accepting a decision, or putting another in its place with a reason and a last day. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { say as sayDecision } from '#messages/en/staff/review/decisions.ts';
import { say } from '#messages/en/staff/review.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../client.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { overrideDecision } from '../forms/sent/review.ts';
import { orNone } from '../forms/sent/sent-form.ts';
import { useSubmit } from '../forms/use-submit.ts';

export interface RespondFormProps {
  readonly patientId: string;
  readonly decisionId: string;
  /** The newest answer the page shows; a colleague’s newer one is not overwritten. */
  readonly seen: string | null;
  readonly isAnswered: boolean;
  /** A dose of the person waits for a signature, which accepting does not give. */
  readonly isWaiting: boolean;
}

export const RespondForm = ({ patientId, decisionId, seen, isAnswered, isWaiting }: RespondFormProps) => {
  const router = useRouter();
  const [isAccepted, setAccepted] = useState(false);
  const submit = useSubmit('', `accept-${decisionId}`);
  const accept = () =>
    submit.send([], async () => {
      const response = { decisionId, kind: 'accept', decision: null, reason: '', until: null };
      await client.clinician.review.respond.mutate({ patientId, response, seen });
      router.refresh();
      setAccepted(true);
    });
  return (
    <div className="screen-only respond opens-in-row">
      <ErrorSummary problems={submit.problems} />
      <div className="row">
        <Button
          tone={isAnswered ? 'plain' : 'primary'}
          id={`accept-${decisionId}`}
          onClick={() => void accept()}
          aria-disabled={submit.isBusy || undefined}
        >
          Accept
        </Button>
        <span role="status">{isAccepted ? sayDecision(isWaiting ? 'taken-unsigned' : 'taken') : ''}</span>
      </div>
      <Disclosure summary="Override">
        <SentFrame
          sent={overrideDecision}
          about={{ patientId, decisionId, seen: orNone(seen) }}
          label="Override"
          hints={{
            reason: say('override.reason-hint'),
            until: say('override.until-hint'),
          }}
          onTaken={router.refresh}
        />
      </Disclosure>
    </div>
  );
};
