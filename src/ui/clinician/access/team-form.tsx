'use client';
/** Adds a colleague to a patient's care team. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/access.ts';
import { Asked } from '#ui/account/asked.tsx';
import { change } from '#ui/account/call.ts';
import { useAsking } from '#ui/account/use-asking.ts';
import { Button } from '#ui/design-system/button.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { addToTeam } from './access-forms.ts';

export interface TeamFormProps {
  readonly patientId: string;
  readonly colleagues: readonly { readonly userId: string; readonly name: string }[];
}

export const TeamForm = ({ patientId, colleagues }: TeamFormProps) => {
  const router = useRouter();
  const posted = usePosted(addToTeam.name, { patientId });
  const asking = useAsking('colleague', posted);
  const [userId, setUserId] = useState(posted?.typed.colleague ?? '');
  const add = (event: FormEvent) => {
    event.preventDefault();
    const typed = { colleague: userId };
    const missing = addToTeam.missing(typed, { patientId });
    if (missing.length > 0) return asking.t(missing);
    void asking.ask(
      () => change(addToTeam.path, addToTeam.input(typed, { patientId })),
      () => router.refresh(),
    );
  };
  return (
    <PostedForm form={addToTeam.name} about={{ patientId }} className="stack" onSubmit={add}>
      <Asked asking={asking} />
      <SelectField
        name="colleague"
        label={say('add-to-the-care-team')}
        empty={say('choose-one')}
        options={colleagues.map(({ userId: value, name }) => ({ value, label: name }))}
        value={userId}
        error={asking.errorOf('colleague')}
        onChange={(event) => setUserId(event.target.value)}
      />
      <Button type="submit" tone="plain">
        Add
      </Button>
    </PostedForm>
  );
};
