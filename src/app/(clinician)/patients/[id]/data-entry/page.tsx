import type { Metadata } from 'next';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import { askedInSession } from '#core/record/followed-joints.ts';
import { say } from '#messages/en/staff/record.ts';
import { DataEntryForm } from '#ui/clinician/data-entry/data-entry-form.tsx';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: say('data-entry') };

const EnterPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient } = at;
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
    <FramedRecord at={at} section="/data-entry">
      <DataEntryForm
        patientId={patientId}
        exercises={exercises}
        joints={patient.profile?.followedJoints ?? []}
        sessionJoints={askedInSession(patient.profile?.followedJoints ?? [], inForce)}
        swellingNotAsked={patient.profile?.swellingNotAsked ?? []}
        asksFatigue={patient.profile?.asksFatigue ?? false}
        asksOtherJoint={patient.profile?.inflammatoryArthritis ?? false}
      />
    </FramedRecord>
  );
};

export default EnterPage;
