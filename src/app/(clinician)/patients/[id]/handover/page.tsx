import type { Metadata } from 'next';
import { CareLinks } from '#ui/clinician/care/care-links.tsx';
import { HandoverScreen } from '#ui/clinician/handover/handover-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Handover' };

const HandoverPage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, clock, day } = await recordPage(params);
  const patientId = patient.id;
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/care">
        <CareLinks patientId={patientId} current="/handover" />
        <h2>Handover</h2>
        <HandoverScreen
          patientId={patientId}
          handover={await clinician.handover.get({ patientId })}
          colleagues={await clinician.handover.colleagues({ patientId })}
          clock={clock}
          day={day}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default HandoverPage;
