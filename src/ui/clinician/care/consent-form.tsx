'use client';
/** Writing down what the patient said to one agreement, after its wording was read out. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import type { Consent } from '../answers.ts';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

export const ConsentForm = ({
  patientId,
  consent,
}: {
  readonly patientId: string;
  readonly consent: Consent;
}) => {
  const router = useRouter();
  const [reason, setReason] = useState('');
  const prefix = `agree-${consent.kind}-`;
  const submit = useSubmit(prefix, `${prefix}send`);
  const act = consent.isGiven ? 'withdrawn' : 'given';
  const record = () =>
    submit.send([], async () => {
      const { kind, version } = consent;
      await client.clinician.consents.record.mutate({
        patientId,
        kind,
        act,
        wordingVersion: version,
        reason: reason.trim() === '' ? null : reason,
      });
      setReason('');
      router.refresh();
    });
  return (
    <div className="stack-close screen-only">
      <ErrorSummary problems={submit.problems} />
      <div className="row row-end">
        {consent.isGiven ? (
          <TextField
            name={`${prefix}reason`}
            label="Reason, in the patient’s words"
            isOptional
            value={reason}
            onChange={(event) => setReason(event.target.value)}
          />
        ) : null}
        <Button tone="plain" id={`${prefix}send`} onClick={() => void record()}>
          {consent.isGiven ? 'The patient withdraws consent' : 'Read aloud; the patient consents'}
          <span className="visually-hidden">: {consent.title}</span>
        </Button>
      </div>
    </div>
  );
};
