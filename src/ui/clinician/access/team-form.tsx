'use client';
/** Adds a colleague to a patient's care team. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/access.ts';
import { Asked } from '#ui/account/asked.tsx';
import { change } from '#ui/account/call.ts';
import { useAsking } from '#ui/account/use-asking.ts';
import { Button } from '#ui/design-system/button.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';

export interface TeamFormProps {
  readonly patientId: string;
  readonly colleagues: readonly { readonly userId: string; readonly name: string }[];
}

export const TeamForm = ({ patientId, colleagues }: TeamFormProps) => {
  const router = useRouter();
  const asking = useAsking('colleague');
  const [userId, setUserId] = useState('');
  const add = (event: FormEvent) => {
    event.preventDefault();
    if (userId === '') return asking.t([{ field: 'colleague', text: say('choose-a-colleague') }]);
    void asking.ask(
      () => change('clinician.team.set', { patientId, userId, belongs: true }),
      () => router.refresh(),
    );
  };
  return (
    <form method="post" className="stack" noValidate onSubmit={add}>
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
      <Button type="submit">Add</Button>
    </form>
  );
};
