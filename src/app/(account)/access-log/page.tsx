import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { AccessLogFrame } from '#ui/patient/account/access-log-frame.tsx';
import { AccessLogList } from '#ui/patient/account/access-log-list.tsx';
import { CalendarAddress } from '#ui/patient/account/calendar-address.tsx';
import { chosenOnPhone, titled } from '../../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('opened.title');

const AccessLogPage = async () => {
  await requirePerson('patient');
  const { patient, account } = await serverCaller();
  const { day, lines } = await patient.access.list();
  const me = await account.me();
  const isByPin = (await account.sessions()).some((one) => one.id === me.sessionId && one.isPhone);
  return (
    <AccessLogFrame chosen={await chosenOnPhone()}>
      <AccessLogList day={day} lines={lines}>
        <CalendarAddress
          feed={await patient.exports.feed()}
          zone={me.zone}
          provenBy={isByPin ? 'pin' : 'passphrase'}
        />
      </AccessLogList>
    </AccessLogFrame>
  );
};

export default AccessLogPage;
