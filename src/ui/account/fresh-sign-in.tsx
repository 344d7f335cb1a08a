'use client';
/**
 * Asks for the passphrase, or a phone's PIN, once more before something an open session alone must not do. A form shows
 * it when a procedure answers with the problem "fresh-sign-in", and sends again in `onProved`.
 */
import { type KeyboardEvent, type MouseEvent, useId, useState } from 'react';
import { proofName } from '#api/inputs/posted-form.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import './words.ts';
import { t } from '#ui/language/words.ts';
import { change, postForm } from './call.ts';
import { useAsking } from './use-asking.ts';

const proofs = {
  passphrase: {
    title: 'account.prove',
    label: 'account.passphrase',
    missing: 'account.no-passphrase',
    isWhole: (typed: string) => typed !== '',
    send: (passphrase: string) => change('account.prove', { passphrase }),
  },
  pin: {
    title: 'account.prove-pin',
    label: 'account.pin',
    missing: 'account.no-pin',
    isWhole: (typed: string) => /^\d{6}$/.test(typed),
    send: (pin: string) => postForm('phone/prove', { pin }),
  },
} as const;

export interface FreshSignInProps {
  /** What opened this sign-in. */
  readonly by?: keyof typeof proofs;
  readonly onProved: () => void;
  readonly onCancel: () => void;
}

/** The page proves it itself; the browser sends nothing. */
const instead = (prove: () => void) => (event: MouseEvent) => {
  event.preventDefault();
  prove();
};

/** No form of its own: it stands inside the form that waits for it. */
export const FreshSignIn = ({ by = 'passphrase', onProved, onCancel }: FreshSignInProps) => {
  const id = useId();
  const [typed, setTyped] = useState('');
  const asking = useAsking(id);
  const proof = proofs[by];
  const prove = () => {
    if (!proof.isWhole(typed)) return asking.t([{ field: id, text: t(proof.missing) }]);
    void asking.ask<unknown>(() => proof.send(typed), onProved);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter') return;
    // The form around it must not be sent by this key.
    event.preventDefault();
    prove();
  };
  return (
    <section className="confirm" aria-live="polite">
      <h2>{t(proof.title)}</h2>
      <p>{t('account.prove-why')}</p>
      <ErrorSummary problems={asking.problems} />
      <TextField
        id={id}
        name={proofName}
        type="password"
        label={t(proof.label)}
        autoComplete="current-password"
        {...(by === 'pin' ? ({ inputMode: 'numeric', maxLength: 6 } as const) : {})}
        value={typed}
        error={asking.problems[0]?.text}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={onKeyDown}
      />
      <div className="row">
        <Button
          // Before scripts the form around it is sent, with the passphrase in it.
          type="submit"
          aria-disabled={asking.isBusy || undefined}
          onClick={instead(prove)}
        >
          {t('ask.continue')}
        </Button>
        <Button tone="plain" onClick={onCancel}>
          {t('account.cancel')}
        </Button>
      </div>
    </section>
  );
};
