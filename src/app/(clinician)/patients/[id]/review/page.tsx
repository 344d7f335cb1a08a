import type { Metadata } from 'next';
import { choiceFrom, daysFrom, type ReviewQuery } from '#ui/clinician/review/review-choice.ts';
import { ReviewScreen } from '#ui/clinician/review/review-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Review' };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<ReviewQuery>;
}

const ReviewPage = async ({ params, searchParams }: Props) => {
  const at = await recordPage(params);
  const { person, clinician, patient, clock, day } = at;
  const query = await searchParams;
  const patientId = patient.id;
  const prescriptions = await clinician.prescriptions.list({ patientId });
  const choice = choiceFrom(query, patient, prescriptions.versions);
  const { joint, version } = choice;
  const dose = joint && version ? { itemId: version.itemId, joint } : undefined;
  return (
    <FramedRecord at={at} section="/review">
      <ReviewScreen
        patient={patient}
        choice={choice}
        review={await clinician.review.get({ patientId, days: daysFrom(query), dose })}
        prescriptions={prescriptions}
        signer={person.name}
        clock={clock}
        day={day}
      />
    </FramedRecord>
  );
};

export default ReviewPage;
