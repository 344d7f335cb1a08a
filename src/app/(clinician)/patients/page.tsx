import type { Metadata } from 'next';
import { ClinicFrame } from '#ui/clinician/clinic-frame.tsx';
import { PatientsScreen } from '#ui/clinician/patients/patients-screen.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { clinicPage } from '../clinic-page.ts';

export const metadata: Metadata = { title: 'Patients' };

interface Props {
  readonly searchParams: Promise<{ readonly name?: string | string[] }>;
}

const PatientsPage = async ({ searchParams }: Props) => {
  const { person, clinician, day } = await clinicPage();
  const { name } = await searchParams;
  return (
    <ClinicFrame place="/patients" name={person.name}>
      <div className="stack-wide">
        <PageHeading>Patients</PageHeading>
        <PatientsScreen
          patients={await clinician.people.list()}
          typed={typeof name === 'string' ? name : ''}
          day={day}
        />
      </div>
    </ClinicFrame>
  );
};

export default PatientsPage;
