import type { Metadata } from 'next';
import { say } from '#messages/en/staff/record.ts';
import { DangerScreen } from '#ui/clinician/danger/danger-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CorrectionsOn } from '../../../corrections-on.tsx';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: say('signs-and-pauses') };

const WarningSignsPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, clock, day } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/warning-signs">
      <DangerScreen
        patientId={patientId}
        danger={await clinician.danger.get({ patientId })}
        clock={clock}
        day={day}
      />
      <CorrectionsOn {...{ clinician, patientId, day }} subjects={['contact']} />
    </FramedRecord>
  );
};

export default WarningSignsPage;
