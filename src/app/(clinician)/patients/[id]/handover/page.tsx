import type { Metadata } from 'next';
import { say } from '#messages/en/staff/documents.ts';
import { languages } from '#messages/languages.ts';
import { languageName, PaperLink } from '#ui/clinician/documents/paper-link.tsx';
import { HandoverScreen } from '#ui/clinician/handover/handover-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Handover' };

const HandoverPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, clock, day } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/handover">
      <h2>Handover</h2>
      {languages.map(({ tag }) => (
        <p key={tag} className="screen-only">
          <PaperLink kind="handover" patientId={patientId} asked={{ language: tag }}>
            {say('paper-handover', { language: languageName(tag) })}
          </PaperLink>
        </p>
      ))}
      <HandoverScreen
        patientId={patientId}
        handover={await clinician.handover.get({ patientId })}
        colleagues={await clinician.handover.colleagues({ patientId })}
        clock={clock}
        day={day}
      />
    </FramedRecord>
  );
};

export default HandoverPage;
