import type { Metadata } from 'next';
import { say } from '#messages/en/staff/care.ts';
import { CareLinks } from '#ui/clinician/care/care-links.tsx';
import { PreVisitScreen } from '#ui/clinician/pre-visit/pre-visit-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { CoveredFrame } from '../../../../covered-frame.tsx';

export const metadata: Metadata = { title: say('pre-visit-answers') };

const BeforeVisitPage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, day } = await recordPage(params);
  const patientId = patient.id;
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/care">
        <CareLinks patientId={patientId} current="/care/pre-visit" />
        <h2>{say('pre-visit-answers')}</h2>
        <PreVisitScreen
          patientId={patientId}
          preVisit={await clinician.preVisits.get({ patientId })}
          day={day}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default BeforeVisitPage;
