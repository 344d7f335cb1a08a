import type { Metadata } from 'next';
import { say } from '#messages/en/staff/record.ts';
import { FirstVisitForm } from '#ui/clinician/first-visit/first-visit-form.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { FramedRecord } from '../../../../framed-record.tsx';

export const metadata: Metadata = { title: say('first-visit') };

const FirstVisit = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { person, clinician, patient } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/care/first-visit">
      <h2>{say('first-visit')}</h2>
      <FirstVisitForm
        patientId={patientId}
        page={await clinician.visits.firstVisit({ patientId })}
        signer={person.name}
      />
    </FramedRecord>
  );
};

export default FirstVisit;
