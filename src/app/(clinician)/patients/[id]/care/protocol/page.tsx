import type { Metadata } from 'next';
import { say } from '#messages/en/staff/episode/protocol.ts';
import { ProtocolScreen } from '#ui/clinician/protocol/protocol-screen.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { FramedRecord } from '../../../../framed-record.tsx';

export const metadata: Metadata = { title: say('title') };

const ProtocolPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, day } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/care/protocol">
      <ProtocolScreen
        patientId={patientId}
        protocols={await clinician.protocols.list({ patientId })}
        day={day}
      />
    </FramedRecord>
  );
};

export default ProtocolPage;
