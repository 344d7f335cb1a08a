import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { CalculationScreen } from '#ui/clinician/calculations/calculation-screen.tsx';
import { clinicPage } from '../../clinic-page.ts';
import { CoveredFrame } from '../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Calculation' };

const CalculationPage = async ({ params }: { readonly params: Promise<{ readonly id: string }> }) => {
  const { person, clinician } = await clinicPage();
  const { id } = await params;
  const row = (await clinician.calculations.list()).find((one) => one.id === id);
  if (!row) notFound();
  return (
    <CoveredFrame place="/calculations" name={person.name}>
      <CalculationScreen row={row} />
    </CoveredFrame>
  );
};

export default CalculationPage;
