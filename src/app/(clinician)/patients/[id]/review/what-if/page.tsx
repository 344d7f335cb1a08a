import type { Metadata } from 'next';
import { say } from '#messages/en/staff/review/what-if.ts';
import { movedBy, typedIn, weeksBy } from '#ui/clinician/what-if/asked.ts';
import { PatientWhatIf } from '#ui/clinician/what-if/patient-what-if.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { FramedRecord } from '../../../../framed-record.tsx';
import { orRefused } from './or-refused.ts';

export const metadata: Metadata = { title: say('title') };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const WhatIfPage = async ({ params, searchParams }: Props) => {
  const at = await recordPage(params);
  const { clinician, patient } = at;
  const typed = typedIn(await searchParams);
  const moved = movedBy(typed);
  const asked = { patientId: patient.id, moved, weeks: weeksBy(typed) };
  return (
    <FramedRecord at={at} section="/review">
      <PatientWhatIf
        patientId={patient.id}
        joints={patient.profile?.followedJoints ?? []}
        settings={await clinician.replay.settings()}
        typed={typed}
        {...(await orRefused(moved ? () => clinician.replay.ofPatient(asked) : null))}
      />
    </FramedRecord>
  );
};

export default WhatIfPage;
