import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { HandoutPage } from '#ui/patient/handout/handout-page.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('handout.title');

const Handout = async () => {
  await requirePerson('patient');
  const view = await (await serverCaller()).patient.today.get();
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/handout" place={view.clinic.name}>
      <HandoutPage view={view} />
    </PatientFrame>
  );
};

export default Handout;
