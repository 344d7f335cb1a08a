import type { Metadata } from 'next';
import { PrescriptionsScreen } from '#ui/clinician/prescribing/prescriptions-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Prescriptions' };

const PrescriptionsPage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, clock, day } = await recordPage(params);
  const patientId = patient.id;
  const consents = await clinician.consents.list({ patientId });
  const { proposals } = await clinician.review.get({ patientId, days: 120 });
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/prescriptions">
        <PrescriptionsScreen
          patientId={patientId}
          prescriptions={await clinician.prescriptions.list({ patientId })}
          proposals={proposals}
          approvals={(await clinician.care.list({ patientId })).preApprovals}
          signer={person.name}
          consents={consents}
          clock={clock}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default PrescriptionsPage;
