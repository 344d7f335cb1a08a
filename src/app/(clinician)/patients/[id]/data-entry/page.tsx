import type { Metadata } from 'next';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import { say } from '#messages/en/staff/record.ts';
import { DataEntryForm } from '#ui/clinician/data-entry/data-entry-form.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { CoveredFrame } from '../../../covered-frame.tsx';

export const metadata: Metadata = { title: say('data-entry') };

const EnterPage = async ({ params }: { readonly params: RecordParams }) => {
  const { person, clinician, patient, day } = await recordPage(params);
  const patientId = patient.id;
  const { inForce } = await clinician.prescriptions.list({ patientId });
  const exercises = inForce.map(({ id, itemId, dose, badDay }) => ({
    itemId,
    prescriptionId: id,
    title: exerciseTitle(dose.exerciseId),
    dose,
    badDay,
  }));
  return (
    <CoveredFrame place="/patients" name={person.name}>
      <RecordFrame patient={patient} day={day} section="/data-entry">
        <DataEntryForm
          patientId={patientId}
          exercises={exercises}
          joints={patient.profile?.followedJoints ?? []}
          swellingNotAsked={patient.profile?.swellingNotAsked ?? []}
        />
      </RecordFrame>
    </CoveredFrame>
  );
};

export default EnterPage;
