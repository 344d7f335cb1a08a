import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { CalculationScreen } from '#ui/clinician/calculations/calculation-screen.tsx';
import { ClinicFrame } from '#ui/clinician/clinic-frame.tsx';
import { clinicPage } from '../../clinic-page.ts';

export const metadata: Metadata = { title: 'Calculation' };

const CalculationPage = async ({ params }: { readonly params: Promise<{ readonly id: string }> }) => {
  const { person, clinician } = await clinicPage();
  const { id } = await params;
  const row = (await clinician.calculations.list()).find((one) => one.id === id);
  if (!row) notFound();
  return (
    <ClinicFrame place="/calculations" name={person.name}>
      <CalculationScreen row={row} />
    </ClinicFrame>
  );
};

export default CalculationPage;
