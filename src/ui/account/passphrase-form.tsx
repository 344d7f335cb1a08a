'use client';
/** A passphrase of one's own. */
import { type FormEvent, useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import './words.ts';
import { t } from '#ui/language/words.ts';
import { change } from './call.ts';
import { useAsking } from './use-asking.ts';

const empty = { current: '', next: '', again: '' };

const names = ['current', 'next', 'again'] as const;

export const PassphraseForm = () => {
  const asking = useAsking('current');
  const [typed, setTyped] = useState(empty);
  const save = (event: FormEvent) => {
    event.preventDefault();
    if (typed.current === '') return asking.t([{ field: 'current', text: t('account.no-passphrase') }]);
    if (typed.next !== typed.again) {
      return asking.t([{ field: 'again', text: t('account.differs') }]);
    }
    const { current, next } = typed;
    void asking.ask(
      () => change('account.changePassphrase', { current, next }),
      () => window.location.reload(),
    );
  };
  return (
    <form method="post" className="stack" noValidate onSubmit={save}>
      <ErrorSummary problems={asking.problems} />
      {names.map((name) => (
        <TextField
          key={name}
          label={t(`account.${name}`)}
          hint={name === 'next' ? t('account.next-hint') : undefined}
          name={name}
          type="password"
          autoComplete={name === 'current' ? 'current-password' : 'new-password'}
          value={typed[name]}
          error={asking.errorOf(name)}
          onChange={(event) => setTyped({ ...typed, [name]: event.target.value })}
        />
      ))}
      <Button type="submit" aria-disabled={asking.isBusy || undefined}>
        {t('account.change')}
      </Button>
    </form>
  );
};
