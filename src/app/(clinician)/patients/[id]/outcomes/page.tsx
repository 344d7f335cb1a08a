import type { Metadata } from 'next';
import { OutcomesScreen } from '#ui/clinician/outcomes/outcomes-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CorrectionsOn } from '../../../corrections-on.tsx';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Outcomes' };

const OutcomesPage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, clock, day } = await recordPage(params);
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/outcomes">
        <OutcomesScreen
          patient={patient}
          course={await clinician.outcomes.get({ patientId: patient.id })}
          clock={clock}
          day={day}
        />
        <CorrectionsOn {...{ clinician, day }} patientId={patient.id} subjects={['goal']} />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default OutcomesPage;
