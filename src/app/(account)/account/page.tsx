import { requireAnyone, serverCaller } from '#server/http/caller.ts';
import { hasPasskeys } from '#server/sign-in/passkeys-here.ts';
import { AccountScreen } from '#ui/account/account-screen.tsx';
import { passkeyLines } from '#ui/account/passkey-lines.ts';
import { titled } from '../../(patient)/chosen-on-phone.ts';
import { OwnFrame } from '../own-frame.tsx';
import { OwnPhonesHere } from '../own-phones-here.tsx';

export const generateMetadata = titled('frame.account');

const AccountPage = async () => {
  const person = await requireAnyone();
  const { account } = await serverCaller();
  const me = await account.me();
  const [sessions, passkeys] = [await account.sessions(), await account.passkeys()];
  const isByPin = sessions.some((one) => one.id === me.sessionId && one.isPhone);
  return (
    <OwnFrame person={person}>
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
        sessions={sessions}
        sessionId={me.sessionId}
      >
        {person.role === 'patient' && me.setUp === 'done' ? (
          <OwnPhonesHere zone={me.zone} isByPin={isByPin} />
        ) : null}
      </AccountScreen>
    </OwnFrame>
  );
};

export default AccountPage;
