import type { Metadata } from 'next';
import { AppointmentsScreen } from '#ui/clinician/appointments/appointments-screen.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { CorrectionsOn } from '../../../../corrections-on.tsx';
import { FramedRecord } from '../../../../framed-record.tsx';

export const metadata: Metadata = { title: 'Appointments' };

const AppointmentsPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, clock, day } = at;
  const patientId = patient.id;
  return (
    <FramedRecord at={at} section="/care/appointments">
      <h2>Appointments</h2>
      <AppointmentsScreen
        patientId={patientId}
        answer={await clinician.visits.list({ patientId })}
        distance={await clinician.distance.guide({ patientId })}
        clock={clock}
      />
      <CorrectionsOn {...{ clinician, patientId, day }} subjects={['visit']} />
    </FramedRecord>
  );
};

export default AppointmentsPage;
