import type { Metadata } from 'next';
import { ClinicFrame } from '#ui/clinician/clinic-frame.tsx';
import { OutcomesScreen } from '#ui/clinician/outcomes/outcomes-screen.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CorrectionsOn } from '../../../corrections-on.tsx';

export const metadata: Metadata = { title: 'Outcomes' };

const OutcomesPage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, clock, day } = await recordPage(params);
  return (
    <ClinicFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/outcomes">
        <OutcomesScreen
          patient={patient}
          course={await clinician.outcomes.get({ patientId: patient.id })}
          clock={clock}
          day={day}
        />
        <CorrectionsOn {...{ clinician, day }} patientId={patient.id} subjects={['goal']} />
      </RecordFrame>
    </ClinicFrame>
  );
};

export default OutcomesPage;
