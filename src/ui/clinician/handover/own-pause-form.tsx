'use client';
/** Who looks after a pause, and until when. Without a name it is whoever presses. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/handover.ts';
import { followUpPause } from '#ui/clinician/forms/sent/danger.ts';
import { useSent } from '#ui/clinician/forms/use-form.ts';
import { DayField } from '#ui/design-system/day/day-field.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import type { Colleagues } from '../episode/answers.ts';

interface OwnPauseProps {
  readonly patientId: string;
  readonly decisionId: string;
  readonly colleagues: Colleagues;
}

export const OwnPauseForm = ({ patientId, decisionId, colleagues }: OwnPauseProps) => {
  const router = useRouter();
  const about = { patientId, decisionId };
  const { at } = useSent({ sent: followUpPause, about, onTaken: router.refresh });
  const { prefix, submit, typed } = at;
  return (
    <PostedForm
      form={followUpPause.name}
      about={about}
      className="stack-close screen-only"
      onSubmit={at.onSubmit}
    >
      <ErrorSummary problems={submit.problems} />
      <div className="fields">
        <SelectField
          name={`${prefix}ownerId`}
          label={say('who-follows-it-up')}
          empty="I do"
          options={colleagues.map(({ id, name }) => ({ value: id, label: name }))}
          value={typed.ownerId ?? ''}
          onChange={(event) => at.onType('ownerId', event.target.value)}
        />
        <DayField
          name={`${prefix}until`}
          label="Until"
          hint={say('date-two-weeks')}
          value={typed.until ?? ''}
          error={at.errorOf('until')}
          onDay={(day) => at.onType('until', day)}
        />
      </div>
      <SendButton tone="plain" id={at.buttonId} aria-disabled={submit.isBusy || undefined}>
        {say('follow-it-up')}
      </SendButton>
    </PostedForm>
  );
};
