import type { Metadata } from 'next';
import { requirePerson, serverCaller } from '#server/caller.ts';
import { VisitApp } from '#ui/care/patient/visit-app.tsx';
import { VisitFrame } from '#ui/care/patient/visit-frame.tsx';

export const metadata: Metadata = { title: 'Questions before your visit' };

const BeforeVisit = async () => {
  const person = await requirePerson('patient');
  const answer = await (await serverCaller()).patient.preVisit.questions();
  return (
    <VisitFrame current="/before-visit">
      <VisitApp answer={answer} ownerId={person.patientId ?? person.userId} />
    </VisitFrame>
  );
};

export default BeforeVisit;
