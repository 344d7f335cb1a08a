import { requirePerson, serverCaller } from '#server/caller.ts';
import { OpenedList } from '#ui/account/opened-list.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone, titled } from '../../(patient)/chosen-on-phone.ts';

export const generateMetadata = titled('opened.title');

const WhoOpenedPage = async () => {
  await requirePerson('patient');
  const { day, lines } = await (await serverCaller()).patient.access.list();
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/who-opened">
      <OpenedList day={day} lines={lines} />
    </PatientFrame>
  );
};

export default WhoOpenedPage;
