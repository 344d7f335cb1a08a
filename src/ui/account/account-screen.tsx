'use client';
/**
 * A person's own sign-in: passphrase, codes, where it is open. Patients read it in their own language; codes
 * and passkeys are for staff, who read English.
 */
import dynamic from 'next/dynamic';
import type { ReactNode } from 'react';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import './words.ts';
import { t } from '#ui/language/words.ts';
import type { PasskeysSectionProps } from './passkeys-section.tsx';
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
  /** What one kind of person has besides. */
  readonly children?: ReactNode;
}

/** Words of staff stay out of what a patient's phone fetches. */
const SecondFirst = dynamic(() => import('./staff-sign-in.tsx').then((file) => file.SecondFirst));
const StaffSignIn = dynamic(() => import('./staff-sign-in.tsx').then((file) => file.StaffSignIn));

const SetUpNotice = ({ setUp }: Pick<AccountScreenProps, 'setUp'>) => {
  if (setUp === 'two-factor') return <SecondFirst />;
  return setUp === 'done' ? null : (
    <Notice tone="care" title={t('account.own-first')}>
      <p>{t('account.own-first-text')}</p>
    </Notice>
  );
};

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
      <StaffSignIn
        hasCodes={props.hasCodes}
        name={props.name}
        email={props.email}
        canMake={props.canMakePasskeys}
        passkeys={props.passkeys}
      />
    )}
    <section className="stack">
      <h2>{t('account.where')}</h2>
      <SessionsList sessions={props.sessions} sessionId={props.sessionId} zone={props.zone} />
    </section>
    {props.children}
  </div>
);
