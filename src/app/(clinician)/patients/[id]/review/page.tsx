import type { Metadata } from 'next';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { choiceFrom, daysFrom, type ReviewQuery } from '#ui/clinician/review/review-choice.ts';
import { ReviewScreen } from '#ui/clinician/review/review-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Review' };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<ReviewQuery>;
}

const ReviewPage = async ({ params, searchParams }: Props) => {
  const { person, clinician, patient, clock, day } = await recordPage(params);
  const query = await searchParams;
  const patientId = patient.id;
  const prescriptions = await clinician.prescriptions.list({ patientId });
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/review">
        <ReviewScreen
          patient={patient}
          choice={choiceFrom(query, patient, prescriptions.versions)}
          review={await clinician.review.get({ patientId, days: daysFrom(query) })}
          prescriptions={prescriptions}
          signer={person.name}
          clock={clock}
          day={day}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default ReviewPage;
