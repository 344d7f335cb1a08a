import type { Metadata } from 'next';
import { CalculationsScreen } from '#ui/clinician/calculations/calculations-screen.tsx';
import { clinicPage } from '../clinic-page.ts';
import { CoveredFrame } from '../covered-frame.tsx';

export const metadata: Metadata = { title: 'Calculations' };

const CalculationsPage = async () => {
  const { person, clinician } = await clinicPage();
  return (
    <CoveredFrame place="/calculations" name={person.name}>
      <CalculationsScreen rows={await clinician.calculations.list()} />
    </CoveredFrame>
  );
};

export default CalculationsPage;
