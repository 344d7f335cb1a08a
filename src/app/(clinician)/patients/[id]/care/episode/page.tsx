import type { Metadata } from 'next';
import { say } from '#messages/en/staff/care.ts';
import { CareLinks } from '#ui/clinician/care/care-links.tsx';
import { EpisodeScreen } from '#ui/clinician/episode/episode-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { CoveredFrame } from '../../../../covered-frame.tsx';

export const metadata: Metadata = { title: say('episode-of-care') };

const CoursePage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, day } = await recordPage(params);
  const patientId = patient.id;
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/care">
        <CareLinks patientId={patientId} current="/care/episode" />
        <h2>{say('episode-of-care')}</h2>
        <EpisodeScreen
          patientId={patientId}
          course={await clinician.episodes.list({ patientId })}
          day={day}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default CoursePage;
