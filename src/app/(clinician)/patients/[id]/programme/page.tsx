import type { Metadata } from 'next';
import { PlannerScreen } from '#ui/clinician/programme/planner-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Programme' };

const ProgrammePage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, day } = await recordPage(params);
  const patientId = patient.id;
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/programme">
        <PlannerScreen
          patientId={patientId}
          prescriptions={await clinician.prescriptions.list({ patientId })}
          programme={await clinician.prescriptions.programme({ patientId })}
          values={await clinician.prescriptions.planning({ patientId })}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default ProgrammePage;
