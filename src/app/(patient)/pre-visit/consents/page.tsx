import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { Consents } from '#ui/patient/pre-visit/consents.tsx';
import { chosenOnPhone, titled } from '../../chosen-on-phone.ts';

export const generateMetadata = titled('agree.title');

const MyConsents = async () => {
  await requirePerson('patient');
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/pre-visit/consents">
      <Consents mine={await (await serverCaller()).patient.consents.get()} />
    </PatientFrame>
  );
};

export default MyConsents;
