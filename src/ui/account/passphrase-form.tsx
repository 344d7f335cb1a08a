'use client';
/** A passphrase of one's own. */
import { type FormEvent, useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { TextField } from '#ui/shared/text-field.tsx';
import { Asked } from './asked.tsx';
import { change } from './call.ts';
import { useAsking } from './use-asking.ts';

const empty = { current: '', next: '', again: '' };

export const PassphraseForm = () => {
  const asking = useAsking('current');
  const [typed, setTyped] = useState(empty);
  const [isTaken, setTaken] = useState(false);
  const set = (name: keyof typeof empty) => (event: { target: { value: string } }) => {
    setTaken(false);
    setTyped({ ...typed, [name]: event.target.value });
  };
  const save = (event: FormEvent) => {
    event.preventDefault();
    if (typed.next !== typed.again) {
      return asking.say([
        { field: 'again', text: 'The two new passphrases differ. Type the new one twice.' },
      ]);
    }
    const { current, next } = typed;
    void asking.ask(
      () => change('account.changePassphrase', { current, next }),
      () => {
        setTyped(empty);
        setTaken(true);
        window.location.reload();
      },
    );
  };
  const field = (name: keyof typeof empty, label: string, hint?: string) => (
    <TextField
      name={name}
      type="password"
      label={label}
      hint={hint}
      autoComplete={name === 'current' ? 'current-password' : 'new-password'}
      value={typed[name]}
      error={asking.errorOf(name)}
      onChange={set(name)}
    />
  );
  return (
    <form method="post" className="stack" noValidate onSubmit={save}>
      <Asked asking={asking} />
      {field('current', 'Passphrase you have now')}
      {field('next', 'New passphrase', 'At least 12 characters. Several words are easiest to remember.')}
      {field('again', 'New passphrase once more')}
      <div className="row">
        <Button type="submit" aria-disabled={asking.isBusy || undefined}>
          Change passphrase
        </Button>
        <span role="status">{isTaken ? 'Changed. Other sign-ins have ended.' : ''}</span>
      </div>
    </form>
  );
};
