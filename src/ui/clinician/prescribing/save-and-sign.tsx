'use client';
/** From a proposal to a signature: keep it unsigned, then sign by name. Only then can the patient see it. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { say } from '#messages/en/staff/prescribing.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../client.ts';
import { type Submit, useSubmit } from '../forms/use-submit.ts';
import { SignButton } from './sign-button.tsx';

export interface SaveAndSignProps {
  readonly patientId: string;
  readonly request: Readonly<Record<string, unknown>>;
  readonly itemId: string | null;
  readonly signer: string;
}

interface SaveDraftProps {
  readonly submit: Submit;
  readonly save: (confirmed: boolean) => void;
}

const SaveDraft = ({ submit, save }: SaveDraftProps) =>
  submit.questions.length > 0 ? (
    <ConfirmQuestion
      question={submit.questions.join(' ')}
      yes={say('save-anyway')}
      no={say('save-change')}
      onYes={() => save(true)}
      onNo={submit.forget}
    />
  ) : (
    <Button onClick={() => save(false)}>{say('save-draft')}</Button>
  );

export const SaveAndSign = ({ patientId, request, itemId, signer }: SaveAndSignProps) => {
  const router = useRouter();
  const [savedId, setSavedId] = useState<string | null>(null);
  const [signedBy, setSignedBy] = useState<string | null>(null);
  const submit = useSubmit('', 'save-or-sign');
  const save = (confirmed: boolean) =>
    submit.send([], async () => {
      const saved = await client.clinician.prescriptions.saveDraft.mutate({
        patientId,
        request,
        confirmed,
        ...(itemId ? { itemId } : {}),
      });
      setSavedId(saved);
      router.refresh();
    });
  return (
    <div className="stack">
      <ErrorSummary problems={submit.problems} />
      <p role="status" id="save-or-sign" tabIndex={-1}>
        {signedBy ? say('signed', { name: signedBy }) : savedId ? say('saved') : say('not-saved')}
      </p>
      {signedBy ? (
        <p>
          <a href={`/patients/${patientId}/programme`}>{say('set-weekdays')}</a> {say('or')}{' '}
          <a href={`/patients/${patientId}/prescriptions`}>{say('see-all')}</a>.
        </p>
      ) : savedId ? (
        <SignButton
          patientId={patientId}
          prescriptionId={savedId}
          signer={signer}
          title={say('this-dose')}
          onSigned={setSignedBy}
        />
      ) : (
        <SaveDraft submit={submit} save={(confirmed) => void save(confirmed)} />
      )}
    </div>
  );
};
