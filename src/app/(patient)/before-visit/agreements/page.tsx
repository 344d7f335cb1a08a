import type { Metadata } from 'next';
import { requirePerson, serverCaller } from '#server/caller.ts';
import { Agreements } from '#ui/care/patient/agreements.tsx';
import { VisitFrame } from '#ui/care/patient/visit-frame.tsx';

export const metadata: Metadata = { title: 'What you have agreed to' };

const MyAgreements = async () => {
  await requirePerson('patient');
  return (
    <VisitFrame current="/before-visit/agreements">
      <Agreements mine={await (await serverCaller()).patient.consents.get()} />
    </VisitFrame>
  );
};

export default MyAgreements;
