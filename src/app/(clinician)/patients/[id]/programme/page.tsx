import type { Metadata } from 'next';
import { ClinicFrame } from '#ui/clinician/clinic-frame.tsx';
import { PlannerScreen } from '#ui/clinician/programme/planner-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';

export const metadata: Metadata = { title: 'Programme' };

const ProgrammePage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, staff, patient, day } = await recordPage(params);
  const patientId = patient.id;
  return (
    <ClinicFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/programme">
        <PlannerScreen
          patientId={patientId}
          prescriptions={await staff.prescriptions.list({ patientId })}
          programme={await staff.prescriptions.programme({ patientId })}
          values={await staff.prescriptions.planning({ patientId })}
        />
      </RecordFrame>
    </ClinicFrame>
  );
};

export default ProgrammePage;
