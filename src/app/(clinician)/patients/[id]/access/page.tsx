import type { Metadata } from 'next';
import { say } from '#messages/en/staff/access.ts';
import { runtime } from '#server/runtime.ts';
import { AccessScreen } from '#ui/clinician/access/access-screen.tsx';
import { MergePanel } from '#ui/clinician/access/merge-panel.tsx';
import { RecordFiles } from '#ui/clinician/access/record-files.tsx';
import { fullName } from '#ui/clinician/record/patient-bar.tsx';
import { SiteForm } from '#ui/clinician/record/site-form.tsx';
import { momentInWords } from '#ui/clinician/when.ts';
import { type RecordParams, recordPage } from '../../../clinic-page.ts';
import '../../../../../ui/account/account.css';
import { FramedRecord } from '../../../framed-record.tsx';

export const metadata: Metadata = { title: say('title') };

const AccessPage = async ({ params }: { readonly params: RecordParams }) => {
  const at = await recordPage(params);
  const { clinician, patient, clock, day } = at;
  const patientId = patient.id;
  const team = await clinician.team.get({ patientId });
  const when = (instant: number) => momentInWords(instant, clock);
  return (
    <FramedRecord at={at} section="/access">
      <div className="sections">
        <AccessScreen
          {...{ patientId, team, when, zone: clock.zone, patientName: fullName(patient) }}
          origin={runtime().settings.PUBLIC_ORIGIN}
          phones={await clinician.phones.list({ patientId })}
          calendar={await clinician.exports.feed({ patientId })}
        />
        <SiteForm patientId={patientId} sites={team.sites} siteId={team.siteId} />
        <MergePanel patient={patient} patients={(await clinician.people.list()).patients} />
        <RecordFiles {...{ patientId, day, when }} {...(await clinician.recordFile.list({ patientId }))} />
      </div>
    </FramedRecord>
  );
};

export default AccessPage;
