'use client';
/** Opens a record kept to another care team, with a reason in writing. */
import { type FormEvent, useState } from 'react';
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
          text: 'Write the reason in a few words. The care team and the patient will read it.',
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
        label="Why you need to open it"
        hint="The care team and the patient will see this with your name."
        maxLength={300}
        value={reason}
        error={asking.errorOf('reason')}
        onChange={(event) => setReason(event.target.value)}
      />
      <div className="row">
        <Button type="submit">Open the record</Button>
        <LinkButton tone="plain" href="/patients">
          Do not open it
        </LinkButton>
      </div>
    </form>
  );
};
