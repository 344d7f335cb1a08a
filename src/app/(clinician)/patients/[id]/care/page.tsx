import type { Metadata } from 'next';
import { CareLinks } from '#ui/clinician/care/care-links.tsx';
import { CareScreen } from '#ui/clinician/care/care-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CorrectionsOn } from '../../../corrections-on.tsx';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Care' };

const CarePage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, clock, day } = await recordPage(params);
  const patientId = patient.id;
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/care">
        <CareLinks patientId={patientId} />
        <CareScreen
          patientId={patientId}
          consents={await clinician.consents.list({ patientId })}
          homeEligibility={await clinician.visits.homeEligibility({ patientId })}
          care={await clinician.care.list({ patientId })}
          clock={clock}
          day={day}
        />
        <CorrectionsOn
          {...{ clinician, patientId, day }}
          subjects={['limit', 'event', 'supervised-session']}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default CarePage;
