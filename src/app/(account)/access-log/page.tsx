import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { AccessLogList } from '#ui/patient/account/access-log-list.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone, titled } from '../../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('opened.title');

const AccessLogPage = async () => {
  await requirePerson('patient');
  const { day, lines } = await (await serverCaller()).patient.access.list();
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/access-log">
      <AccessLogList day={day} lines={lines} />
    </PatientFrame>
  );
};

export default AccessLogPage;
