import type { Metadata } from 'next';
import { CuffPressures } from '#ui/clinician/outcomes/cuff-pressures.tsx';
import { RetestsThisWeek } from '#ui/clinician/outcomes/retests.tsx';
import { PlannerScreen } from '#ui/clinician/programme/planner-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Programme' };

const ProgrammePage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, day } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/programme">
      <PlannerScreen
        patientId={patientId}
        prescriptions={await clinician.prescriptions.list({ patientId })}
        programme={await clinician.prescriptions.programme({ patientId })}
        values={await clinician.prescriptions.planning({ patientId })}
      />
      <RetestsThisWeek
        patientId={patientId}
        retests={await clinician.outcomes.retests({ patientId })}
        day={day}
      />
      <CuffPressures
        patientId={patientId}
        cuffs={await clinician.outcomes.cuffPressures({ patientId })}
        day={day}
      />
    </FramedRecord>
  );
};

export default ProgrammePage;
