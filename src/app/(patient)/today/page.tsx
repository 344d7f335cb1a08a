import type { Metadata } from 'next';
import { requirePerson, serverCaller } from '#server/caller.ts';
import { PatientApp } from '#ui/patient/patient-app.tsx';
import { PatientFrame } from '#ui/patient/patient-frame.tsx';

export const metadata: Metadata = { title: 'Today' };

const Today = async () => {
  const person = await requirePerson('patient');
  const view = await (await serverCaller()).patient.today.get();
  return (
    <PatientFrame current="/today" place={view.clinic.name}>
      <PatientApp view={view} ownerId={person.patientId ?? person.userId} />
    </PatientFrame>
  );
};

export default Today;
