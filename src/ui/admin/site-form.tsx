'use client';
/** A place at which the clinic works. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';
import { addSite } from './admin-forms.ts';

export const SiteForm = () => {
  const router = useRouter();
  const posted = usePosted(addSite.name);
  const asking = useAsking('site-name', posted);
  const [name, setName] = useState(posted?.typed['site-name'] ?? '');
  const [address, setAddress] = useState(posted?.typed['site-address'] ?? '');
  const add = (event: FormEvent) => {
    event.preventDefault();
    const typed = { 'site-name': name, 'site-address': address };
    const missing = addSite.missing(typed, {});
    if (missing.length > 0) return asking.t(missing);
    void asking.ask(
      () => change(addSite.path, addSite.input(typed, {})),
      () => {
        setName('');
        setAddress('');
        router.refresh();
      },
    );
  };
  return (
    <PostedForm form={addSite.name} className="stack" onSubmit={add}>
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
    </PostedForm>
  );
};
