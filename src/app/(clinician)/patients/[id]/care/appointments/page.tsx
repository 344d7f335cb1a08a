import type { Metadata } from 'next';
import { AppointmentsScreen } from '#ui/clinician/appointments/appointments-screen.tsx';
import { CareLinks } from '#ui/clinician/care/care-links.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { CoveredFrame } from '../../../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Appointments' };

const AppointmentsPage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, clock, day } = await recordPage(params);
  const patientId = patient.id;
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/care">
        <CareLinks patientId={patientId} current="/care/appointments" />
        <h2>Appointments</h2>
        <AppointmentsScreen
          patientId={patientId}
          answer={await clinician.visits.list({ patientId })}
          clock={clock}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default AppointmentsPage;
