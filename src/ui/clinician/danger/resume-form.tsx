'use client';
/** Resuming what a pause holds, exercise by exercise, with a reason. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/danger.ts';
import { FreshSignIn } from '#ui/account/fresh-sign-in.tsx';
import { Button } from '#ui/design-system/button.tsx';
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

export interface ResumeFormProps {
  readonly patientId: string;
  readonly pauseId: string;
  /** Exercises it holds; without one the pause as a whole is ended. */
  readonly held: readonly { readonly itemId: string; readonly title: string }[];
}

export const ResumeForm = ({ patientId, pauseId, held }: ResumeFormProps) => {
  const router = useRouter();
  const [itemIds, setItemIds] = useState<readonly string[]>([]);
  const [reason, setReason] = useState('');
  const prefix = `resume-${pauseId}-`;
  const submit = useSubmit(prefix, `${prefix}send`);
  const send = async () => {
    const missing = [
      ...(held.length > 0 && itemIds.length === 0
        ? [{ field: 'itemIds', text: say('tick-the-exercises-to-resume') }]
        : []),
      ...(reason.trim() ? [] : [{ field: 'reason', text: say('enter-the-reason') }]),
    ];
    const taken = await submit.send(missing, async () => {
      await client.clinician.danger.resume.mutate({ patientId, pauseId, itemIds: [...itemIds], reason });
    });
    if (taken) router.refresh();
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    void send();
  };
  return (
    <form method="post" className="stack-close screen-only" noValidate onSubmit={onSubmit}>
      <ErrorSummary problems={submit.problems} />
      {held.length > 0 ? (
        <CheckboxGroup
          name={`${prefix}itemIds`}
          legend={say('exercises-to-resume')}
          options={held.map(({ itemId, title }) => ({ value: itemId, label: title }))}
          chosen={itemIds}
          error={submit.errorOf('itemIds')}
          onChoose={setItemIds}
        />
      ) : null}
      <TextField
        name={`${prefix}reason`}
        label="Reason"
        value={reason}
        error={submit.errorOf('reason')}
        onChange={(event) => setReason(event.target.value)}
      />
      {submit.needsProof ? <FreshSignIn onProved={() => void send()} onCancel={submit.forget} /> : null}
      <Button type="submit" tone="plain" id={`${prefix}send`} aria-disabled={submit.isBusy || undefined}>
        {held.length > 0 ? 'Resume' : say('end-the-pause')}
      </Button>
    </form>
  );
};
