import type { Metadata } from 'next';
import { CalculationsScreen } from '#ui/clinician/calculations/calculations-screen.tsx';
import { ClinicFrame } from '#ui/clinician/clinic-frame.tsx';
import { clinicPage } from '../clinic-page.ts';

export const metadata: Metadata = { title: 'Calculations' };

const CalculationsPage = async () => {
  const { person, clinician } = await clinicPage();
  return (
    <ClinicFrame place="/calculations" name={person.name}>
      <CalculationsScreen rows={await clinician.calculations.list()} />
    </ClinicFrame>
  );
};

export default CalculationsPage;
