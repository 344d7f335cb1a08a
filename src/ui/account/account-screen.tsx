'use client';
/**
 * A person's own sign-in: passphrase, codes, where it is open. Patients read it in their own language; codes
 * and passkeys are for staff, who read English.
 */
import { LinkButton } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import './words.ts';
import { t } from '#ui/language/words.ts';
import { PasskeysSection, type PasskeysSectionProps } from './passkeys-section.tsx';
import { PassphraseForm } from './passphrase-form.tsx';
import { type SessionLine, SessionsList } from './sessions-list.tsx';

export interface AccountScreenProps {
  readonly name: string;
  readonly email: string;
  readonly isPatient: boolean;
  readonly setUp: 'done' | 'passphrase' | 'two-factor';
  readonly hasPassphrase: boolean;
  readonly hasCodes: boolean;
  readonly sessions: readonly SessionLine[];
  readonly sessionId: string;
  readonly zone: string;
  readonly passkeys: PasskeysSectionProps['passkeys'];
  readonly canMakePasskeys: boolean;
}

const SetUpNotice = ({ setUp }: Pick<AccountScreenProps, 'setUp'>) =>
  setUp === 'done' ? null : (
    <Notice
      tone="care"
      title={setUp === 'passphrase' ? t('account.own-first') : 'Set up one-time codes or a passkey first'}
    >
      <p>
        {setUp === 'passphrase'
          ? t('account.own-first-text')
          : 'Your clinic requires staff to use more than a passphrase. Set up codes, or sign in with a passkey, to use the other pages.'}
      </p>
    </Notice>
  );

const Codes = ({ hasCodes }: { readonly hasCodes: boolean }) => (
  <section className="stack">
    <h2>One-time codes</h2>
    <p>
      {hasCodes
        ? 'On: you sign in with your passphrase and a code.'
        : 'Off: you sign in with your passphrase only.'}
    </p>
    <div className="row">
      <LinkButton tone={hasCodes ? 'plain' : 'primary'} href="/account/codes">
        {hasCodes ? 'Change codes' : 'Set up codes'}
      </LinkButton>
    </div>
  </section>
);

export const AccountScreen = (props: AccountScreenProps) => (
  <div className="stack-wide">
    <PageHeading caption={props.email.endsWith('.invalid') && props.isPatient ? undefined : props.email}>
      {props.name}
    </PageHeading>
    <SetUpNotice setUp={props.setUp} />
    {props.hasPassphrase ? (
      <section className="stack">
        <h2>{t('account.passphrase')}</h2>
        <PassphraseForm />
      </section>
    ) : null}
    {props.isPatient || props.setUp === 'passphrase' ? null : (
      <>
        <Codes hasCodes={props.hasCodes} />
        <PasskeysSection
          name={props.name}
          email={props.email}
          canMake={props.canMakePasskeys}
          passkeys={props.passkeys}
        />
      </>
    )}
    <section className="stack">
      <h2>{t('account.where')}</h2>
      <SessionsList sessions={props.sessions} sessionId={props.sessionId} zone={props.zone} />
    </section>
  </div>
);
