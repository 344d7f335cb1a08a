'use client';
/** A new patient: adults only, refused by the server with the reason. */
import { useRouter } from 'next/navigation';
import { newPatientFields } from '#core/record/patient-details.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';

export const NewPatientForm = () => {
  const router = useRouter();
  return (
    <FormFrame
      prefix="new-"
      fields={newPatientFields}
      label="Add this patient"
      taken="Patient added. Opening the record."
      hints={{
        birthDay: 'As YYYY-MM-DD, such as 1961-04-09. Loadgate is for adults, 18 and over.',
        phone: 'The number the clinic calls. Leave it empty if there is none.',
      }}
      send={async (patient) => {
        const id = await client.clinician.people.create.mutate({ patient });
        router.push(`/patients/${id}`);
      }}
    />
  );
};
