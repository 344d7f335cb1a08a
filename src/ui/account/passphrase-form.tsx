'use client';
/** A passphrase of one's own. */
import { type FormEvent, useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import './words.ts';
import { t } from '#ui/language/words.ts';
import { changePassphrase, passphraseNames } from './account-forms.ts';
import { change } from './call.ts';
import { useAsking } from './use-asking.ts';

const empty = { current: '', next: '', again: '' };

export const PassphraseForm = () => {
  const asking = useAsking('current', usePosted(changePassphrase.name));
  const [typed, setTyped] = useState(empty);
  const save = (event: FormEvent) => {
    event.preventDefault();
    const missing = changePassphrase.missing(typed, {});
    if (missing.length > 0) return asking.t(missing);
    void asking.ask(
      () => change(changePassphrase.path, changePassphrase.input(typed, {})),
      () => window.location.reload(),
    );
  };
  return (
    <PostedForm form={changePassphrase.name} className="stack" onSubmit={save}>
      <ErrorSummary problems={asking.problems} />
      {passphraseNames.map((name) => (
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
    </PostedForm>
  );
};
