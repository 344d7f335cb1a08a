import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { VisitApp } from '#ui/patient/pre-visit/visit-app.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('visit.title');

const PreVisit = async () => {
  const person = await requirePerson('patient');
  const answer = await (await serverCaller()).patient.preVisit.questions();
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/pre-visit">
      <VisitApp answer={answer} ownerId={person.patientId ?? person.userId} />
    </PatientFrame>
  );
};

export default PreVisit;
