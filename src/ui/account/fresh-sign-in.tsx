'use client';
/**
 * Asks for the passphrase once more before something an open session alone must not do. A form shows
 * it when a procedure answers with the problem "fresh-sign-in", and sends again in `onProved`.
 */
import { type FormEvent, useId, useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { ErrorSummary } from '#ui/shared/error-summary.tsx';
import { TextField } from '#ui/shared/text-field.tsx';
import { change } from './call.ts';
import { useAsking } from './use-asking.ts';

export interface FreshSignInProps {
  readonly onProved: () => void;
  readonly onCancel: () => void;
}

export const FreshSignIn = ({ onProved, onCancel }: FreshSignInProps) => {
  const id = useId();
  const [passphrase, setPassphrase] = useState('');
  const asking = useAsking(id);
  const prove = (event: FormEvent) => {
    event.preventDefault();
    // The form around it, if there is one, must not be sent by this button.
    event.stopPropagation();
    if (passphrase === '') return asking.say([{ field: id, text: 'Enter your passphrase.' }]);
    void asking.ask(() => change('account.prove', { passphrase }), onProved);
  };
  return (
    <section className="confirm" aria-live="polite">
      <h2>Enter your passphrase again</h2>
      <p>It was last given more than ten minutes ago. What you entered stays on this page.</p>
      <ErrorSummary problems={asking.problems} />
      <form method="post" className="stack" noValidate onSubmit={prove}>
        <TextField
          id={id}
          name="fresh-passphrase"
          type="password"
          label="Passphrase"
          autoComplete="current-password"
          value={passphrase}
          error={asking.problems[0]?.text}
          onChange={(event) => setPassphrase(event.target.value)}
        />
        <div className="row">
          <Button type="submit" aria-disabled={asking.isBusy || undefined}>
            Go on
          </Button>
          <Button tone="plain" onClick={onCancel}>
            Leave it
          </Button>
        </div>
      </form>
    </section>
  );
};
