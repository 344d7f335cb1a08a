import type { Metadata } from 'next';
import { say } from '#messages/en/staff/record.ts';
import { EpisodeScreen } from '#ui/clinician/episode/episode-screen.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { FramedRecord } from '../../../../framed-record.tsx';

export const metadata: Metadata = { title: say('episode') };

const CoursePage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, day } = at;
  const patientId = patient.id;
  const { kinds } = await clinician.consents.list({ patientId });
  return (
    <FramedRecord at={at} section="/care/episode">
      <h2>{say('episode')}</h2>
      <EpisodeScreen
        patientId={patientId}
        course={await clinician.episodes.list({ patientId })}
        day={day}
        mayTellOthers={kinds.some(({ kind, state }) => kind === 'sharing' && state === 'given')}
      />
    </FramedRecord>
  );
};

export default CoursePage;
