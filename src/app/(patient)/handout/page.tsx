import type { Metadata } from 'next';
import { requirePerson, serverCaller } from '#server/caller.ts';
import { HandoutPage } from '#ui/patient/handout/handout-page.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone } from '../chosen-on-phone.ts';

export const metadata: Metadata = { title: 'My plan on one page' };

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
