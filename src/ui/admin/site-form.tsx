'use client';
/** A place at which the clinic works. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';

export const SiteForm = () => {
  const router = useRouter();
  const asking = useAsking('site-name');
  const [name, setName] = useState('');
  const [address, setAddress] = useState('');
  const add = (event: FormEvent) => {
    event.preventDefault();
    if (name.trim().length < 2) return asking.t([{ field: 'site-name', text: say('site.no-name') }]);
    void asking.ask(
      () => change('admin.sites.add', { name, address: address.trim() || null }),
      () => {
        setName('');
        setAddress('');
        router.refresh();
      },
    );
  };
  return (
    <form method="post" className="stack" noValidate onSubmit={add}>
      <Asked asking={asking} />
      <TextField
        name="site-name"
        label={say('site.name')}
        value={name}
        error={asking.errorOf('site-name')}
        onChange={(event) => setName(event.target.value)}
      />
      <TextField
        name="site-address"
        label="Address"
        isOptional
        value={address}
        onChange={(event) => setAddress(event.target.value)}
      />
      <Button type="submit">{say('site.add')}</Button>
    </form>
  );
};
