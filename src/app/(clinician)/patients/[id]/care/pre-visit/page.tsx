import type { Metadata } from 'next';
import { say } from '#messages/en/staff/record.ts';
import { PreVisitScreen } from '#ui/clinician/pre-visit/pre-visit-screen.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { FramedRecord } from '../../../../framed-record.tsx';

export const metadata: Metadata = { title: say('pre-visit') };

const BeforeVisitPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, day } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/care/pre-visit">
      <h2>{say('pre-visit')}</h2>
      <PreVisitScreen
        patientId={patientId}
        preVisit={await clinician.preVisits.get({ patientId })}
        day={day}
      />
    </FramedRecord>
  );
};

export default BeforeVisitPage;
