'use client';
/** The number patients ring when nobody answers at the clinic. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';

export const UrgentNumberForm = ({ current }: { readonly current: string }) => {
  const router = useRouter();
  const asking = useAsking('urgent-number');
  const [urgentNumber, setUrgentNumber] = useState(current);
  const save = (event: FormEvent) => {
    event.preventDefault();
    void asking.ask(
      () => change('admin.care.enterUrgentNumber', { urgentNumber }),
      () => router.refresh(),
    );
  };
  return (
    <form method="post" className="stack" noValidate onSubmit={save}>
      <Asked asking={asking} />
      <TextField
        name="urgent-number"
        label={say('urgent-number')}
        hint={say('urgent.hint')}
        type="tel"
        maxLength={30}
        value={urgentNumber}
        error={asking.errorOf('urgent-number')}
        onChange={(event) => setUrgentNumber(event.target.value)}
      />
      <Button type="submit" disabled={asking.isBusy}>
        {say('urgent.save')}
      </Button>
    </form>
  );
};
