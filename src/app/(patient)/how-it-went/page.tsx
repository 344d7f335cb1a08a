import type { Metadata } from 'next';
import { requirePerson, serverCaller } from '#server/caller.ts';
import { HistoryPage } from '#ui/patient/history/history-page.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';
import { chosenOnPhone } from '../chosen-on-phone.ts';

export const metadata: Metadata = { title: 'How it went' };

const HowItWent = async () => {
  await requirePerson('patient');
  return (
    <PatientFrame chosen={await chosenOnPhone()} current="/how-it-went">
      <HistoryPage view={await (await serverCaller()).patient.history.get()} />
    </PatientFrame>
  );
};

export default HowItWent;
