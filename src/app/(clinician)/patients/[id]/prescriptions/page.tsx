import type { Metadata } from 'next';
import { PrescriptionsScreen } from '#ui/clinician/prescribing/prescriptions-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Prescriptions' };

const PrescriptionsPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { person, clinician, patient, clock } = at;
  const patientId = patient.id;
  const consents = await clinician.consents.list({ patientId });
  const { proposals, plan } = await clinician.review.get({ patientId, days: 120 });
  return (
    <FramedRecord at={at} section="/prescriptions">
      <PrescriptionsScreen
        patientId={patientId}
        prescriptions={await clinician.prescriptions.list({ patientId })}
        {...{ plan, proposals }}
        approvals={(await clinician.care.list({ patientId })).preApprovals}
        signer={person.name}
        consents={consents}
        clock={clock}
      />
    </FramedRecord>
  );
};

export default PrescriptionsPage;
