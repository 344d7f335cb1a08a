import type { Metadata } from 'next';
import { OutcomesScreen } from '#ui/clinician/outcomes/outcomes-screen.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CorrectionsOn } from '../../../corrections-on.tsx';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Outcomes' };

const OutcomesPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, clock, day } = at;
  return (
    <FramedRecord at={at} section="/outcomes">
      <OutcomesScreen
        patient={patient}
        course={await clinician.outcomes.get({ patientId: patient.id })}
        doseDays={await clinician.outcomes.doseDays({ patientId: patient.id })}
        retests={await clinician.outcomes.retests({ patientId: patient.id })}
        cuffs={await clinician.outcomes.cuffPressures({ patientId: patient.id })}
        atHome={await clinician.homeQuestions.get({ patientId: patient.id })}
        clock={clock}
        day={day}
      />
      <CorrectionsOn {...{ clinician, day }} patientId={patient.id} subjects={['goal', 'home-answers']} />
    </FramedRecord>
  );
};

export default OutcomesPage;
