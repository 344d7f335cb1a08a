import type { Metadata } from 'next';
import { ClinicFrame } from '#ui/clinician/clinic-frame.tsx';
import { OverviewScreen } from '#ui/clinician/record/overview-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../clinic-page.ts';
import { WaitingCorrections } from '../../corrections-on.tsx';

export const metadata: Metadata = { title: 'Patient record' };

const OverviewPage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, clock, day } = await recordPage(params);
  const patientId = patient.id;
  const { lines, next } = await clinician.worklist.list({ limit: 100 });
  const line = lines.find((one) => one.patientId === patientId);
  return (
    <ClinicFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="">
        <WaitingCorrections {...{ clinician, patientId }} />
        <OverviewScreen
          patient={patient}
          worklistItems={line ? [line.item, ...line.others] : []}
          isListCut={next !== null}
          review={await clinician.review.get({ patientId, days: 28 })}
          prescriptions={await clinician.prescriptions.list({ patientId })}
          clock={clock}
          day={day}
        />
      </RecordFrame>
    </ClinicFrame>
  );
};

export default OverviewPage;
