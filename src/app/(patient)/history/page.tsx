import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { HistoryPage } from '#ui/patient/history/history-page.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('history.title');

const HowItWent = async () => {
  await requirePerson('patient');
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/history">
      <HistoryPage view={await (await serverCaller()).patient.history.get()} />
    </PatientFrame>
  );
};

export default HowItWent;
