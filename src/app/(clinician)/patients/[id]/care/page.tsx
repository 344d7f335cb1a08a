import type { Metadata } from 'next';
import { CareScreen } from '#ui/clinician/care/care-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CorrectionsOn } from '../../../corrections-on.tsx';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Care' };

const CarePage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, clock, day } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/care">
      <CareScreen
        patientId={patientId}
        consents={await clinician.consents.list({ patientId })}
        homeEligibility={await clinician.visits.homeEligibility({ patientId })}
        care={await clinician.care.list({ patientId })}
        clock={clock}
        day={day}
      />
      <CorrectionsOn {...{ clinician, patientId, day }} subjects={['limit', 'event', 'supervised-session']} />
    </FramedRecord>
  );
};

export default CarePage;
