'use client';
/** What only staff have beside a passphrase, in English: one-time codes and passkeys. Fetched for them alone. */
import { say } from '#messages/en/staff/account.ts';
import { LinkButton } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PasskeysSection, type PasskeysSectionProps } from './passkeys-section.tsx';

/** Said where the clinic requires more than a passphrase and there is no more yet. */
export const SecondFirst = () => (
  <Notice tone="care" title={say('second-first')}>
    <p>{say('second-first-note')}</p>
  </Notice>
);

const Codes = ({ hasCodes }: { readonly hasCodes: boolean }) => (
  <section className="stack">
    <h2>{say('codes')}</h2>
    <p>{hasCodes ? say('codes.on') : say('codes.off')}</p>
    <div className="row">
      <LinkButton tone="plain" href="/account/codes">
        {hasCodes ? say('codes.change') : say('codes.set-up')}
      </LinkButton>
    </div>
  </section>
);

export const StaffSignIn = ({
  hasCodes,
  ...passkeys
}: PasskeysSectionProps & { readonly hasCodes: boolean }) => (
  <>
    <Codes hasCodes={hasCodes} />
    <PasskeysSection {...passkeys} />
  </>
);
