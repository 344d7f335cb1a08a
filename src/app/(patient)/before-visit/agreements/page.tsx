import type { Metadata } from 'next';
import { requirePerson, serverCaller } from '#server/caller.ts';
import { Agreements } from '#ui/care/patient/agreements.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone } from '../../chosen-on-phone.ts';

export const metadata: Metadata = { title: 'What you have agreed to' };

const MyAgreements = async () => {
  await requirePerson('patient');
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/before-visit/agreements">
      <Agreements mine={await (await serverCaller()).patient.consents.get()} />
    </PatientFrame>
  );
};

export default MyAgreements;
