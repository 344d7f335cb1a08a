import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { say } from '#messages/en/staff/record.ts';
import { OverviewScreen } from '#ui/clinician/record/overview-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../clinic-page.ts';
import { WaitingCorrections } from '../../corrections-on.tsx';
import { CoveredFrame } from '../../covered-frame.tsx';

export const metadata: Metadata = { title: say('title') };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<{ readonly read?: string | string[] }>;
}

const OverviewPage = async ({ params, searchParams }: Props) => {
  const { person, clinician, patient, clock, day } = await recordPage(params);
  if (patient.mergedInto && !(await searchParams).read) redirect(`/patients/${patient.mergedInto.intoId}`);
  const patientId = patient.id;
  const { lines, next } = await clinician.worklist.list({ limit: 100 });
  const ids = [patientId, ...patient.merges.map((merge) => merge.patientId)];
  const own = lines.filter((line) => ids.includes(line.patientId));
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="">
        <WaitingCorrections {...{ clinician, patientId }} />
        <OverviewScreen
          {...{ patient, clock, day, isListCut: next !== null }}
          details={await clinician.people.details({ patientId })}
          worklistItems={own.flatMap((line) => [line.item, ...line.others])}
          review={await clinician.review.get({ patientId, days: 28 })}
          prescriptions={await clinician.prescriptions.list({ patientId })}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default OverviewPage;
