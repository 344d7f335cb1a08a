import type { Metadata } from 'next';
import { say } from '#messages/en/staff/review/what-if.ts';
import { movedBy, typedIn, weeksBy } from '#ui/clinician/what-if/asked.ts';
import { PatientWhatIf } from '#ui/clinician/what-if/patient-what-if.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { FramedRecord } from '../../../../framed-record.tsx';
import { orRefused } from './or-refused.ts';
import { Picture } from './picture.tsx';

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
  const weeks = weeksBy(typed);
  const asked = { patientId: patient.id, moved, weeks };
  const answer = await orRefused(moved ? () => clinician.replay.ofPatient(asked) : null);
  return (
    <FramedRecord at={at} section="/review">
      <PatientWhatIf
        patientId={patient.id}
        joints={patient.profile?.followedJoints ?? []}
        settings={await clinician.replay.settings()}
        typed={typed}
        {...answer}
      >
        {answer.found ? <Picture at={at} found={answer.found} joint={typed.joint} weeks={weeks} /> : null}
      </PatientWhatIf>
    </FramedRecord>
  );
};

export default WhatIfPage;
