'use client';
/** Names who takes over danger nobody has acknowledged. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';
import { nameCoveringClinician } from './admin-forms.ts';

export interface CoveringClinicianFormProps {
  readonly clinicians: readonly { readonly id: string; readonly name: string }[];
  /** Empty where nobody is named. */
  readonly current: string;
}

export const CoveringClinicianForm = ({ clinicians, current }: CoveringClinicianFormProps) => {
  const router = useRouter();
  const posted = usePosted(nameCoveringClinician.name);
  const asking = useAsking('covering', posted);
  const [userId, setUserId] = useState(posted?.typed.covering ?? current);
  const name = (event: FormEvent) => {
    event.preventDefault();
    void asking.ask(
      () => change(nameCoveringClinician.path, nameCoveringClinician.input({ covering: userId }, {})),
      () => router.refresh(),
    );
  };
  return (
    <PostedForm form={nameCoveringClinician.name} className="stack" onSubmit={name}>
      <Asked asking={asking} />
      <SelectField
        name="covering"
        label={say('covering')}
        empty="Nobody"
        options={clinicians.map(({ id: value, name: label }) => ({ value, label }))}
        value={userId}
        error={asking.errorOf('covering')}
        onChange={(event) => setUserId(event.target.value)}
      />
      <Button type="submit" disabled={asking.isBusy}>
        {say('covering.save')}
      </Button>
    </PostedForm>
  );
};
