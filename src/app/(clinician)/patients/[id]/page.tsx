import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { say } from '#messages/en/staff/record.ts';
import { SummaryScreen } from '#ui/clinician/summary/summary-screen.tsx';
import { type RecordParams, recordPage } from '../../clinic-page.ts';
import { WaitingCorrections } from '../../corrections-on.tsx';
import { FramedRecord } from '../../framed-record.tsx';

export const metadata: Metadata = { title: say('title') };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<{ readonly read?: string | string[] }>;
}

const SummaryPage = async ({ params, searchParams }: Props) => {
  const at = await recordPage(params);
  const { clinician, patient, clock, day } = at;
  if (patient.mergedInto && !(await searchParams).read) redirect(`/patients/${patient.mergedInto.intoId}`);
  const patientId = patient.id;
  const summary = await clinician.review.summary({ patientId });
  return (
    <FramedRecord at={at} section="">
      <WaitingCorrections {...{ clinician, patientId }} />
      <SummaryScreen
        {...{ patient, clock, day, bar: at.bar }}
        details={await clinician.people.details({ patientId })}
        summary={summary}
        prescriptions={await clinician.prescriptions.list({ patientId })}
        plan={summary.plan}
        course={await clinician.outcomes.get({ patientId })}
        care={await clinician.care.list({ patientId })}
      />
    </FramedRecord>
  );
};

export default SummaryPage;
