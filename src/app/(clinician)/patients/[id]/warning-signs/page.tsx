import type { Metadata } from 'next';
import { say } from '#messages/en/staff/record.ts';
import { DangerScreen } from '#ui/clinician/danger/danger-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: say('signs-and-pauses') };

const WarningSignsPage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, clock, day } = await recordPage(params);
  const patientId = patient.id;
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/warning-signs">
        <DangerScreen
          patientId={patientId}
          danger={await clinician.danger.get({ patientId })}
          clock={clock}
          day={day}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default WarningSignsPage;
