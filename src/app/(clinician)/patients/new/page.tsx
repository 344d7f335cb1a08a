import type { Metadata } from 'next';
import { say } from '#messages/en/staff/patients.ts';
import { NewPatientForm } from '#ui/clinician/patients/new-patient-form.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { clinicPage } from '../../clinic-page.ts';
import { CoveredFrame } from '../../covered-frame.tsx';

export const metadata: Metadata = { title: say('add') };

const NewPatientPage = async () => {
  const { person } = await clinicPage();
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <div className="stack-wide">
        <PageHeading caption="Patients">{say('add')}</PageHeading>
        <NewPatientForm />
      </div>
    </CoveredFrame>
  );
};

export default NewPatientPage;
