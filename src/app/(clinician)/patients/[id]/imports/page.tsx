import type { Metadata } from 'next';
import { say } from '#messages/en/staff/exchange/imports.ts';
import { ImportsScreen } from '#ui/clinician/imports/imports-screen.tsx';
import { momentInWords } from '#ui/clinician/when.ts';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: say('title') };

const ImportsPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, clock } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/imports">
      <ImportsScreen
        patientId={patientId}
        when={(instant) => momentInWords(instant, clock)}
        {...(await clinician.imports.list({ patientId }))}
      />
    </FramedRecord>
  );
};

export default ImportsPage;
