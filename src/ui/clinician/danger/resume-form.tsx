'use client';
/** Resuming what a pause holds, exercise by exercise, with a reason. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/danger.ts';
import { FreshSignIn } from '#ui/account/fresh-sign-in.tsx';
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { resumePause } from '../forms/sent/danger.ts';
import { linesOf } from '../forms/typed.ts';
import { useSent } from '../forms/use-form.ts';

export interface ResumeFormProps {
  readonly patientId: string;
  readonly pauseId: string;
  /** Exercises it holds; without one the pause as a whole is ended. */
  readonly held: readonly { readonly itemId: string; readonly title: string }[];
}

export const ResumeForm = ({ patientId, pauseId, held }: ResumeFormProps) => {
  const router = useRouter();
  const about = { patientId, pauseId, holds: held.length > 0 ? 'yes' : 'no' };
  const { at } = useSent({ sent: resumePause, about, onTaken: router.refresh });
  const { prefix, submit, errorOf, typed } = at;
  return (
    <PostedForm
      form={resumePause.name}
      about={about}
      className="stack-close screen-only"
      onSubmit={at.onSubmit}
    >
      <ErrorSummary problems={submit.problems} />
      {held.length > 0 ? (
        <CheckboxGroup
          name={`${prefix}itemIds`}
          legend={say('exercises-to-resume')}
          options={held.map(({ itemId, title }) => ({ value: itemId, label: title }))}
          chosen={linesOf(typed.itemIds ?? '')}
          error={errorOf('itemIds')}
          onChoose={(ids) => at.onType('itemIds', ids.join('\n'))}
        />
      ) : null}
      <TextField
        name={`${prefix}reason`}
        label="Reason"
        value={typed.reason ?? ''}
        error={errorOf('reason')}
        onChange={(event) => at.onType('reason', event.target.value)}
      />
      {submit.needsProof ? (
        <FreshSignIn onProved={() => void at.send(false)} onCancel={submit.forget} />
      ) : null}
      <SendButton tone="plain" id={at.buttonId} aria-disabled={submit.isBusy || undefined}>
        {held.length > 0 ? 'Resume' : say('end-the-pause')}
      </SendButton>
    </PostedForm>
  );
};
