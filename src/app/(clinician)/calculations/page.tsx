import type { Metadata } from 'next';
import { CalculationsScreen } from '#ui/clinician/calculations/calculations-screen.tsx';
import { clinicPage } from '../clinic-page.ts';
import { CoveredFrame } from '../covered-frame.tsx';

export const metadata: Metadata = { title: 'Calculations' };

interface CalculationsPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const CalculationsPage = async ({ searchParams }: CalculationsPageProps) => {
  const { person, clinician } = await clinicPage();
  const { words } = await searchParams;
  return (
    <CoveredFrame place="/calculations" name={person.name}>
      <CalculationsScreen rows={await clinician.calculations.list()} words={String(words ?? '')} />
    </CoveredFrame>
  );
};

export default CalculationsPage;
