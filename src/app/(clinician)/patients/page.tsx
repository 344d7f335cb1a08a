import type { Metadata } from 'next';
import { PatientsScreen } from '#ui/clinician/patients/patients-screen.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { askedText } from '../../asked-text.ts';
import { clinicPage } from '../clinic-page.ts';
import { CoveredFrame } from '../covered-frame.tsx';

export const metadata: Metadata = { title: 'Patients' };

interface Props {
  readonly searchParams: Promise<{ readonly name?: string | string[] }>;
}

const PatientsPage = async ({ searchParams }: Props) => {
  const { person, clinician, day } = await clinicPage();
  const { name } = await searchParams;
  const typed = askedText(name);
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <div className="stack-wide">
        <PageHeading>Patients</PageHeading>
        <PatientsScreen {...(await clinician.people.list({ name: typed }))} typed={typed} day={day} />
      </div>
    </CoveredFrame>
  );
};

export default PatientsPage;
