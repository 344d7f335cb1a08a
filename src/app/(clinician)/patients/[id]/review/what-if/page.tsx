import type { Metadata } from 'next';
import { shortestRange } from '#core/review/zoom.ts';
import { say } from '#messages/en/staff/review/what-if.ts';
import type { WhatIfOfPatient } from '#ui/clinician/answers.ts';
import { choiceFrom } from '#ui/clinician/review/review-choice.ts';
import { movedBy, typedIn, weeksBy } from '#ui/clinician/what-if/asked.ts';
import { OnTheChart } from '#ui/clinician/what-if/on-the-chart.tsx';
import { PatientWhatIf } from '#ui/clinician/what-if/patient-what-if.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import { FramedRecord } from '../../../../framed-record.tsx';
import { orRefused } from './or-refused.ts';

export const metadata: Metadata = { title: say('title') };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** The joint that is asked about, or else the one with most days that would have been others. */
const jointOf = ({ lines }: WhatIfOfPatient, asked: string | undefined): string => {
  const count = (joint: string) => lines.filter((line) => line.joint === joint).length;
  const [most = ''] = lines.map(({ joint }) => joint).toSorted((a, b) => count(b) - count(a));
  return asked ?? most;
};

interface Shown {
  readonly at: Awaited<ReturnType<typeof recordPage>>;
  readonly found: WhatIfOfPatient;
  readonly joint: string | undefined;
  readonly weeks: number;
}

const Picture = async ({ at, found, joint, weeks }: Shown) => {
  const { clinician, patient, person, clock, day } = at;
  const prescriptions = await clinician.prescriptions.list({ patientId: patient.id });
  const choice = choiceFrom({ joint: jointOf(found, joint) }, patient, prescriptions.versions);
  const dose =
    choice.joint && choice.version ? { itemId: choice.version.itemId, joint: choice.joint } : undefined;
  const days = Math.max(shortestRange, weeks * 7);
  const review = await clinician.review.get({ patientId: patient.id, days, dose });
  return (
    <OnTheChart
      at={{ patient, choice, review, prescriptions, signer: person.name, clock, day }}
      found={found}
    />
  );
};

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
        {answer.found && answer.found.lines.length > 0 ? (
          <Picture at={at} found={answer.found} joint={typed.joint} weeks={weeks} />
        ) : null}
      </PatientWhatIf>
    </FramedRecord>
  );
};

export default WhatIfPage;
