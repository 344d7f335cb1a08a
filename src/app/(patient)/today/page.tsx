import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { phoneEntriesKey } from '#server/phone-entries.ts';
import { runtime } from '#server/runtime.ts';
import { PatientApp } from '#ui/patient/patient-app.tsx';
import { DayFrame } from '#ui/patient/today/day-frame.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('frame.today');

const Today = async () => {
  const person = await requirePerson('patient');
  const view = await (await serverCaller()).patient.today.get();
  return (
    <DayFrame chosen={await chosenOnPhone()} place={view.clinic.name}>
      <PatientApp
        view={view}
        ownerId={person.patientId ?? person.userId}
        clinicKey={phoneEntriesKey(runtime().keys, person.clinicId)}
      />
    </DayFrame>
  );
};

export default Today;
