'use client';
/** Who looks after a pause, and until when. Without a name it is whoever presses. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/handover.ts';
import { client } from '#ui/clinician/client.ts';
import { useSubmit } from '#ui/clinician/forms/use-submit.ts';
import { Button } from '#ui/design-system/button.tsx';
import { DayField } from '#ui/design-system/day/day-field.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import type { Colleagues } from '../episode/answers.ts';

interface OwnPauseProps {
  readonly patientId: string;
  readonly decisionId: string;
  readonly colleagues: Colleagues;
}

const useOwnPause = ({ patientId, decisionId }: OwnPauseProps) => {
  const router = useRouter();
  const [until, setUntil] = useState('');
  const [ownerId, setOwner] = useState('');
  const prefix = `pause-${decisionId}-`;
  const submit = useSubmit(prefix, `${prefix}send`);
  const onSubmit = async (event: FormEvent) => {
    event.preventDefault();
    const missing = until ? [] : [{ field: 'until', text: say('enter-the-last-day-of-follow') }];
    const taken = await submit.send(missing, async () => {
      await client.clinician.handover.ownPause.mutate({
        patientId,
        decisionId,
        until,
        ownerId: ownerId || null,
      });
    });
    if (taken) router.refresh();
  };
  return { until, setUntil, ownerId, setOwner, prefix, submit, onSubmit };
};

export const OwnPauseForm = (props: OwnPauseProps) => {
  const { until, setUntil, ownerId, setOwner, prefix, submit, onSubmit } = useOwnPause(props);
  return (
    <form
      method="post"
      className="stack-close screen-only"
      noValidate
      onSubmit={(event) => void onSubmit(event)}
    >
      <ErrorSummary problems={submit.problems} />
      <div className="fields">
        <SelectField
          name={`${prefix}owner`}
          label={say('who-follows-it-up')}
          empty="I do"
          options={props.colleagues.map(({ id, name }) => ({ value: id, label: name }))}
          value={ownerId}
          onChange={(event) => setOwner(event.target.value)}
        />
        <DayField
          name={`${prefix}until`}
          label="Until"
          hint={say('date-two-weeks')}
          value={until}
          error={submit.errorOf('until')}
          onDay={setUntil}
        />
      </div>
      <Button type="submit" tone="plain" id={`${prefix}send`} aria-disabled={submit.isBusy || undefined}>
        {say('follow-it-up')}
      </Button>
    </form>
  );
};
