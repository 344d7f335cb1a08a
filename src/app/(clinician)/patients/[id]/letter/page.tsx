import type { Metadata } from 'next';
import { letterInWords } from '#ui/care/papers/paper-in-words.ts';
import { PaperView } from '#ui/care/papers/paper-view.tsx';
import { ClinicFrame } from '#ui/clinician/clinic-frame.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';

export const metadata: Metadata = { title: 'Letter at the end of care' };

interface PageProps {
  readonly params: RecordParams;
  readonly searchParams: Promise<{ readonly episode?: string | string[] }>;
}

const LetterPage = async ({ params, searchParams }: PageProps) => {
  const { person, staff, patient, day } = await recordPage(params);
  const { episode } = await searchParams;
  const patientId = patient.id;
  const facts =
    typeof episode === 'string'
      ? await staff.papers.get({ patientId, episodeId: episode.slice(0, 64) })
      : null;
  return (
    <ClinicFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/care">
        <PaperView patientId={patientId} paper={letterInWords(facts, day)} />
      </RecordFrame>
    </ClinicFrame>
  );
};

export default LetterPage;
