import type { Metadata } from 'next';
import { requireAnyone, serverCaller } from '#server/caller.ts';
import { hasPasskeys } from '#server/passkeys-here.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { AccountScreen } from '#ui/account/account-screen.tsx';
import { browserInWords } from '#ui/account/browser-in-words.ts';
import { passkeyLines } from '#ui/account/passkey-lines.ts';
import { systemMoment } from '#ui/account/system-moment.ts';

export const metadata: Metadata = { title: 'Your sign-in' };

const AccountPage = async () => {
  const person = await requireAnyone();
  const { account } = await serverCaller();
  const me = await account.me();
  const [sessions, passkeys] = [await account.sessions(), await account.passkeys()];
  return (
    <AccountFrame person={person} current="/account">
      <AccountScreen
        name={me.name}
        email={me.email}
        isPatient={person.role === 'patient'}
        setUp={me.setUp}
        hasPassphrase={me.hasPassphrase}
        hasCodes={me.hasCodes}
        canMakePasskeys={hasPasskeys()}
        passkeys={passkeyLines(passkeys, me.zone)}
        sessions={sessions.map((one) => ({
          id: one.id,
          where: browserInWords(one.userAgent, one.isPhone),
          since: systemMoment(one.createdAt, me.zone),
          lastUsed: systemMoment(one.lastUsedAt, me.zone),
          isThis: one.id === me.sessionId,
        }))}
      />
    </AccountFrame>
  );
};

export default AccountPage;
