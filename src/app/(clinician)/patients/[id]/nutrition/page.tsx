import type { Metadata } from 'next';
import { NutritionScreen } from '#ui/clinician/nutrition/nutrition-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Nutrition' };

const NutritionPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, person, clock, day } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/nutrition">
      <NutritionScreen
        patientId={patientId}
        nutrition={await clinician.nutrition.get({ patientId })}
        signer={person.name}
        clock={clock}
        day={day}
      />
    </FramedRecord>
  );
};

export default NutritionPage;
