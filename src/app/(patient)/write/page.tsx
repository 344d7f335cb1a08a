import type { Metadata } from 'next';
import { requirePerson, serverCaller } from '#server/caller.ts';
import { WriteForm } from '#ui/care/patient/write-form.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone } from '../chosen-on-phone.ts';

export const metadata: Metadata = { title: 'Write to your clinic' };

const Write = async () => {
  await requirePerson('patient');
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/write">
      <WriteForm mine={await (await serverCaller()).patient.messages.get()} />
    </PatientFrame>
  );
};

export default Write;
