import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { VisitApp } from '#ui/patient/pre-visit/visit-app.tsx';
import { VisitFrame } from '#ui/patient/pre-visit/visit-frame.tsx';
import { chosenOnPhone, titled } from '../chosen-on-phone.ts';

export const generateMetadata = titled('visit.title');

const PreVisit = async () => {
  const person = await requirePerson('patient');
  const answer = await (await serverCaller()).patient.preVisit.questions();
  return (
    <VisitFrame chosen={await chosenOnPhone()}>
      <VisitApp answer={answer} ownerId={person.patientId ?? person.userId} />
    </VisitFrame>
  );
};

export default PreVisit;
