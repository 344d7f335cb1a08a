import type { Metadata } from 'next';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { ScreeningScreen } from '#ui/clinician/screening/screening-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CorrectionsOn } from '../../../corrections-on.tsx';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Screening' };

const ScreeningPage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, day } = await recordPage(params);
  const patientId = patient.id;
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/screening">
        <ScreeningScreen
          patientId={patientId}
          screening={await clinician.screening.sheet({ patientId })}
          outcomes={await clinician.screening.outcomes({ patientId })}
          day={day}
        />
        <CorrectionsOn {...{ clinician, patientId, day }} subjects={['screening', 'clearance']} />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default ScreeningPage;
