'use client';
/** Opens a record kept to another care team, with a reason in writing. */
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/access.ts';
import { Asked } from '#ui/account/asked.tsx';
import { change } from '#ui/account/call.ts';
import { useAsking } from '#ui/account/use-asking.ts';
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { LongTextField } from '#ui/design-system/text-field.tsx';
import { openInEmergency } from './access-forms.ts';

export const EmergencyAccessForm = ({ patientId }: { readonly patientId: string }) => {
  const posted = usePosted(openInEmergency.name, { patientId });
  const asking = useAsking('reason', posted);
  const [reason, setReason] = useState(posted?.typed.reason ?? '');
  const open = (event: FormEvent) => {
    event.preventDefault();
    const missing = openInEmergency.missing({ reason }, { patientId });
    if (missing.length > 0) return asking.t(missing);
    void asking.ask(
      () => change(openInEmergency.path, openInEmergency.input({ reason }, { patientId })),
      () => window.location.assign(`/patients/${patientId}`),
    );
  };
  return (
    <PostedForm form={openInEmergency.name} about={{ patientId }} className="stack" onSubmit={open}>
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
    </PostedForm>
  );
};
