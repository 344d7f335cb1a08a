'use client';
/** Ten codes for the day the phone is lost. Shown once; each opens once. */
import { say } from '#messages/en/staff/account.ts';
import { Button, LinkButton } from '#ui/design-system/button.tsx';

export const RecoveryCodes = ({ codes }: { readonly codes: readonly string[] }) => (
  <section className="stack keep-together">
    <h2>{say('recovery')}</h2>
    <p>{say('recovery.note')}</p>
    <ol className="recovery-codes">
      {codes.map((code) => (
        <li key={code} className="secret">
          {code}
        </li>
      ))}
    </ol>
    <div className="row">
      <Button tone="plain" onClick={() => window.print()}>
        Print
      </Button>
      <LinkButton href="/account">{say('recovery.saved')}</LinkButton>
    </div>
  </section>
);
