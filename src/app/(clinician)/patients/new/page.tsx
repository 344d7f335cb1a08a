import type { Metadata } from 'next';
import { ClinicFrame } from '#ui/clinician/clinic-frame.tsx';
import { NewPatientForm } from '#ui/clinician/patients/new-patient-form.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { clinicPage } from '../../clinic-page.ts';

export const metadata: Metadata = { title: 'Add a patient' };

const NewPatientPage = async () => {
  const { person } = await clinicPage();
  return (
    <ClinicFrame place="/patients" name={person.name}>
      <div className="stack-wide">
        <PageHeading caption="Patients">Add a patient</PageHeading>
        <NewPatientForm />
      </div>
    </ClinicFrame>
  );
};

export default NewPatientPage;
