'use client';
/** A passphrase of one's own. */
import { type FormEvent, useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { TextField } from '#ui/shared/text-field.tsx';
import { Asked } from './asked.tsx';
import { change } from './call.ts';
import { useAsking } from './use-asking.ts';

const empty = { current: '', next: '', again: '' };

type Name = keyof typeof empty;

const words: Readonly<Record<Name, { readonly label: string; readonly hint?: string }>> = {
  current: { label: 'Passphrase you have now' },
  next: {
    label: 'New passphrase',
    hint: 'At least 12 characters. Several words are easiest to remember.',
  },
  again: { label: 'New passphrase once more' },
};

export const PassphraseForm = () => {
  const asking = useAsking('current');
  const [typed, setTyped] = useState(empty);
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
      () => window.location.reload(),
    );
  };
  return (
    <form method="post" className="stack" noValidate onSubmit={save}>
      <Asked asking={asking} />
      {(Object.keys(words) as Name[]).map((name) => (
        <TextField
          key={name}
          {...words[name]}
          name={name}
          type="password"
          autoComplete={name === 'current' ? 'current-password' : 'new-password'}
          value={typed[name]}
          error={asking.errorOf(name)}
          onChange={(event) => setTyped({ ...typed, [name]: event.target.value })}
        />
      ))}
      <Button type="submit" aria-disabled={asking.isBusy || undefined}>
        Change passphrase
      </Button>
    </form>
  );
};
