import type { Metadata } from 'next';
import { say } from '#messages/en/staff/care.ts';
import { CareLinks } from '#ui/clinician/care/care-links.tsx';
import { FirstVisitForm } from '#ui/clinician/first-visit/first-visit-form.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { CoveredFrame } from '../../../../covered-frame.tsx';

export const metadata: Metadata = { title: say('first-visit') };

const FirstVisit = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, day } = await recordPage(params);
  const patientId = patient.id;
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/care">
        <CareLinks patientId={patientId} current="/care/first-visit" />
        <h2>{say('first-visit')}</h2>
        <FirstVisitForm
          patientId={patientId}
          page={await clinician.visits.firstVisit({ patientId })}
          signer={person.name}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default FirstVisit;
