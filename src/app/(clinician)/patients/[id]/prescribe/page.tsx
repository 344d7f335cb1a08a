import type { Metadata } from 'next';
import { methodFrom, PrescribeScreen } from '#ui/clinician/prescribing/prescribe-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Prescribe' };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<{ readonly method?: string; readonly line?: string }>;
}

const PrescribePage = async ({ params, searchParams }: Props) => {
  const { person, clinician, patient, day } = await recordPage(params);
  const { method, line } = await searchParams;
  const patientId = patient.id;
  const { versions } = await clinician.prescriptions.list({ patientId });
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/prescribe">
        <PrescribeScreen
          patient={patient}
          outcomes={await clinician.screening.outcomes({ patientId })}
          measurements={await clinician.measurements.list({ patientId })}
          method={methodFrom(method)}
          version={versions.findLast((version) => version.itemId === line) ?? null}
          signer={person.name}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default PrescribePage;
