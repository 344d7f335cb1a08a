'use client';
/**
 * Asks for the passphrase once more before something an open session alone must not do. A form shows
 * it when a procedure answers with the problem "fresh-sign-in", and sends again in `onProved`.
 */
import { type KeyboardEvent, useId, useState } from 'react';
import { say } from '#messages/en/staff/account.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { change } from './call.ts';
import { useAsking } from './use-asking.ts';

export interface FreshSignInProps {
  readonly onProved: () => void;
  readonly onCancel: () => void;
}

/** No form of its own: it stands inside the form that waits for it. */
export const FreshSignIn = ({ onProved, onCancel }: FreshSignInProps) => {
  const id = useId();
  const [passphrase, setPassphrase] = useState('');
  const asking = useAsking(id);
  const prove = () => {
    if (passphrase === '') return asking.t([{ field: id, text: say('no-passphrase') }]);
    void asking.ask(() => change('account.prove', { passphrase }), onProved);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter') return;
    // The form around it must not be sent by this key.
    event.preventDefault();
    prove();
  };
  return (
    <section className="confirm" aria-live="polite">
      <h2>{say('again')}</h2>
      <p>{say('again.note')}</p>
      <ErrorSummary problems={asking.problems} />
      <TextField
        id={id}
        name="fresh-passphrase"
        type="password"
        label="Passphrase"
        autoComplete="current-password"
        value={passphrase}
        error={asking.problems[0]?.text}
        onChange={(event) => setPassphrase(event.target.value)}
        onKeyDown={onKeyDown}
      />
      <div className="row">
        <Button aria-disabled={asking.isBusy || undefined} onClick={prove}>
          Continue
        </Button>
        <Button tone="plain" onClick={onCancel}>
          Cancel
        </Button>
      </div>
    </section>
  );
};
