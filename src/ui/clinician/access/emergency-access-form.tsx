'use client';
/** Opens a record kept to another care team, with a reason in writing. */
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/access.ts';
import { Asked } from '#ui/account/asked.tsx';
import { change } from '#ui/account/call.ts';
import { useAsking } from '#ui/account/use-asking.ts';
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { LongTextField } from '#ui/design-system/text-field.tsx';

export const EmergencyAccessForm = ({ patientId }: { readonly patientId: string }) => {
  const asking = useAsking('reason');
  const [reason, setReason] = useState('');
  const open = (event: FormEvent) => {
    event.preventDefault();
    if (reason.trim().length < 10) {
      return asking.t([
        {
          field: 'reason',
          text: say('write-the-reason'),
        },
      ]);
    }
    void asking.ask(
      () => change('clinician.team.open', { patientId, reason }),
      () => window.location.assign(`/patients/${patientId}`),
    );
  };
  return (
    <form method="post" className="stack" noValidate onSubmit={open}>
      <Asked asking={asking} />
      <LongTextField
        name="reason"
        label={say('why-you-need-to-open')}
        hint={say('reason-is-seen')}
        maxLength={300}
        value={reason}
        error={asking.errorOf('reason')}
        onChange={(event) => setReason(event.target.value)}
      />
      <div className="row">
        <Button type="submit">{say('open-the-record')}</Button>
        <LinkButton tone="plain" href="/patients">
          {say('do-not-open')}
        </LinkButton>
      </div>
    </form>
  );
};
