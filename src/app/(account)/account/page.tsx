import type { ReactNode } from 'react';
import type { Person } from '#api/person.ts';
import { requireAnyone, serverCaller } from '#server/caller.ts';
import { hasPasskeys } from '#server/passkeys-here.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { AccountScreen } from '#ui/account/account-screen.tsx';
import { passkeyLines } from '#ui/account/passkey-lines.ts';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone, titled } from '../../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('frame.account');

interface FrameProps {
  readonly person: Person;
  readonly children: ReactNode;
}

/** A patient reads the page in the own language, staff in English. */
const Frame = async ({ person, children }: FrameProps) =>
  person.role === 'patient' ? (
    <PatientFrame chosen={await chosenOnPhone()} current="/account">
      {children}
    </PatientFrame>
  ) : (
    <AccountFrame person={person} current="/account">
      {children}
    </AccountFrame>
  );

const AccountPage = async () => {
  const person = await requireAnyone();
  const { account } = await serverCaller();
  const me = await account.me();
  const [sessions, passkeys] = [await account.sessions(), await account.passkeys()];
  return (
    <Frame person={person}>
      <AccountScreen
        name={me.name}
        email={me.email}
        isPatient={person.role === 'patient'}
        setUp={me.setUp}
        hasPassphrase={me.hasPassphrase}
        hasCodes={me.hasCodes}
        canMakePasskeys={hasPasskeys()}
        passkeys={passkeyLines(passkeys, me.zone)}
        zone={me.zone}
        sessions={sessions.map((one) => ({
          id: one.id,
          userAgent: one.userAgent,
          isPhone: one.isPhone,
          since: one.createdAt,
          lastUsed: one.lastUsedAt,
          isThis: one.id === me.sessionId,
        }))}
      />
    </Frame>
  );
};

export default AccountPage;
