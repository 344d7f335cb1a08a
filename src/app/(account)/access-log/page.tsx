import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { AccessLogFrame } from '#ui/patient/account/access-log-frame.tsx';
import { AccessLogList } from '#ui/patient/account/access-log-list.tsx';
import { chosenOnPhone, titled } from '../../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('opened.title');

const AccessLogPage = async () => {
  await requirePerson('patient');
  const { day, lines } = await (await serverCaller()).patient.access.list();
  return (
    <AccessLogFrame chosen={await chosenOnPhone()}>
      <AccessLogList day={day} lines={lines} />
    </AccessLogFrame>
  );
};

export default AccessLogPage;
