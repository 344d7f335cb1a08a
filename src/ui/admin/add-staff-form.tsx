'use client';
/** A new person of the clinic, with a passphrase to hand over. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/administration.ts';
import { Button } from '#ui/design-system/button.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../account/asked.tsx';
import { change } from '../account/call.ts';
import { useAsking } from '../account/use-asking.ts';
import { addStaff, type KindOfStaff } from './admin-forms.ts';
import { HandedOver } from './handed-over.tsx';

const kinds = [
  { value: 'clinician', label: 'Clinician', hint: say('kind.clinician-hint') },
  {
    value: 'both',
    label: say('kind.both'),
    hint: say('kind.both-hint'),
  },
  {
    value: 'administrator',
    label: 'Administrator',
    hint: say('kind.administrator-hint'),
  },
  { value: 'reception', label: 'Reception', hint: say('kind.reception-hint') },
] as const;

interface Typed {
  readonly name: string;
  readonly email: string;
  readonly kind: KindOfStaff | null;
}

interface FieldsProps {
  readonly typed: Typed;
  readonly errorOf: (field: string) => string | undefined;
  readonly onType: (more: Partial<Typed>) => void;
}

const StaffFields = ({ typed, errorOf, onType }: FieldsProps) => (
  <>
    <TextField
      name="name"
      label="Name"
      hint={say('name-hint')}
      value={typed.name}
      error={errorOf('name')}
      onChange={(event) => onType({ name: event.target.value })}
    />
    <TextField
      name="email"
      type="email"
      label={say('email')}
      value={typed.email}
      error={errorOf('email')}
      onChange={(event) => onType({ email: event.target.value })}
    />
    <RadioGroup
      name="kind"
      legend={say('kind')}
      options={kinds}
      chosen={typed.kind}
      error={errorOf('kind')}
      onChoose={(kind) => onType({ kind })}
    />
  </>
);

export const AddStaffForm = () => {
  const router = useRouter();
  const posted = usePosted(addStaff.name);
  const asking = useAsking('name', posted);
  const [typed, setTyped] = useState<Typed>({
    name: posted?.typed.name ?? '',
    email: posted?.typed.email ?? '',
    kind: (posted?.typed.kind as KindOfStaff | undefined) || null,
  });
  const [passphrase, setPassphrase] = useState<string | null>(null);
  const add = (event: FormEvent) => {
    event.preventDefault();
    const texts = { ...typed, kind: typed.kind ?? '' };
    const problems = addStaff.missing(texts, {});
    if (problems.length > 0) return asking.t(problems);
    void asking.ask(
      () => change<{ passphrase: string }>(addStaff.path, addStaff.input(texts, {})),
      (handed) => {
        setPassphrase(handed.passphrase);
        router.refresh();
      },
    );
  };
  if (passphrase) return <HandedOver name={typed.name} passphrase={passphrase} />;
  return (
    <PostedForm form={addStaff.name} className="stack" onSubmit={add}>
      <Asked asking={asking} />
      <StaffFields
        typed={typed}
        errorOf={asking.errorOf}
        onType={(more) => setTyped({ ...typed, ...more })}
      />
      <Button type="submit" aria-disabled={asking.isBusy || undefined}>
        {say('add-person')}
      </Button>
      <p role="status">{posted?.done}</p>
    </PostedForm>
  );
};
