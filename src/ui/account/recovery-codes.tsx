'use client';
/** Ten codes for the day the phone is lost. Shown once; each opens once. */
import { Button, LinkButton } from '#ui/design-system/button.tsx';

export const RecoveryCodes = ({ codes }: { readonly codes: readonly string[] }) => (
  <section className="stack keep-together">
    <h2>Recovery codes</h2>
    <p>
      Print them or write them down now. They are not shown again. Each one signs you in once instead of a
      code from the app. Keep them away from your computer.
    </p>
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
      <LinkButton href="/account">I have saved them</LinkButton>
    </div>
  </section>
);
