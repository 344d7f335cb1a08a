'use client';
/** Writing down what the patient said to one agreement, after its wording was read out. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { ErrorSummary } from '#ui/shared/error-summary.tsx';
import { TextField } from '#ui/shared/text-field.tsx';
import type { Agreement } from '../answers.ts';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

export const AgreementForm = ({
  patientId,
  agreement,
}: {
  readonly patientId: string;
  readonly agreement: Agreement;
}) => {
  const router = useRouter();
  const [reason, setReason] = useState('');
  const prefix = `agree-${agreement.kind}-`;
  const submit = useSubmit(prefix, `${prefix}send`);
  const act = agreement.stands ? 'withdrawn' : 'given';
  const record = () =>
    submit.send([], async () => {
      const { kind, version } = agreement;
      await client.staff.consents.record.mutate({
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
        {agreement.stands ? (
          <TextField
            name={`${prefix}reason`}
            label="Reason, in the patient’s words"
            isOptional
            value={reason}
            onChange={(event) => setReason(event.target.value)}
          />
        ) : null}
        <Button tone="plain" id={`${prefix}send`} onClick={() => void record()}>
          {agreement.stands ? 'The patient takes it back' : 'Read out; the patient agrees'}
          <span className="only-heard">: {agreement.title}</span>
        </Button>
      </div>
    </div>
  );
};
