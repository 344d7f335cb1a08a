'use client';
/** A new person of the clinic, with a passphrase to hand over. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { RadioGroup } from '#ui/shared/radio-group.tsx';
import { TextField } from '#ui/shared/text-field.tsx';
import { Asked } from './asked.tsx';
import { change } from './call.ts';
import { HandedOver } from './handed-over.tsx';
import { useAsking } from './use-asking.ts';

const kinds = [
  { value: 'clinician', label: 'Clinician', hint: 'Works with records.' },
  {
    value: 'both',
    label: 'Clinician who also administers',
    hint: 'Works with records, people and clinic choices.',
  },
  {
    value: 'administrator',
    label: 'Administrator',
    hint: 'People, places and clinic choices. Opens no record.',
  },
] as const;

type Kind = (typeof kinds)[number]['value'];

export const rolesOf = (kind: Kind) => ({
  role: kind === 'administrator' ? 'administrator' : 'clinician',
  administers: kind !== 'clinician',
});

export const AddStaffForm = () => {
  const router = useRouter();
  const asking = useAsking('name');
  const [typed, setTyped] = useState({ name: '', email: '' });
  const [kind, setKind] = useState<Kind | null>(null);
  const [passphrase, setPassphrase] = useState<string | null>(null);
  const add = (event: FormEvent) => {
    event.preventDefault();
    const problems = [
      ...(typed.name.trim().length < 2 ? [{ field: 'name', text: 'Enter the name.' }] : []),
      ...(/^\S+@\S+$/.test(typed.email)
        ? []
        : [{ field: 'email', text: 'Enter an address with an @ in it.' }]),
      ...(kind ? [] : [{ field: 'kind', text: 'Choose what this person does.' }]),
    ];
    if (problems.length > 0 || !kind) return asking.say(problems);
    void asking.ask(
      () => change<{ passphrase: string }>('admin.staff.add', { ...typed, ...rolesOf(kind) }),
      (handed) => {
        setPassphrase(handed.passphrase);
        router.refresh();
      },
    );
  };
  if (passphrase) return <HandedOver name={typed.name} passphrase={passphrase} />;
  const set = (name: 'name' | 'email') => (event: { target: { value: string } }) =>
    setTyped({ ...typed, [name]: event.target.value });
  return (
    <form method="post" className="stack" noValidate onSubmit={add}>
      <Asked asking={asking} />
      <TextField
        name="name"
        label="Name"
        hint="As it stands under a signature"
        value={typed.name}
        error={asking.errorOf('name')}
        onChange={set('name')}
      />
      <TextField
        name="email"
        type="email"
        label="Email address"
        value={typed.email}
        error={asking.errorOf('email')}
        onChange={set('email')}
      />
      <RadioGroup
        name="kind"
        legend="What this person does"
        options={kinds}
        chosen={kind}
        error={asking.errorOf('kind')}
        onChoose={setKind}
      />
      <Button type="submit" aria-disabled={asking.isBusy || undefined}>
        Add this person
      </Button>
    </form>
  );
};
