import type { Metadata } from 'next';
import { say } from '#messages/en/staff/access.ts';
import { requirePerson } from '#server/http/caller.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { EmergencyAccessForm } from '#ui/clinician/access/emergency-access-form.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';

export const metadata: Metadata = { title: say('open-a-record') };

interface Props {
  readonly params: Promise<{ readonly id: string }>;
}

const OpenRecordPage = async ({ params }: Props) => {
  const person = await requirePerson('clinician');
  return (
    <AccountFrame person={person} current="/patients">
      <div className="stack-wide">
        <PageHeading caption="Patients">{say('only-the-care-team')}</PageHeading>
        <p>{say('open-with-a-reason')}</p>
        <EmergencyAccessForm patientId={(await params).id} />
      </div>
    </AccountFrame>
  );
};

export default OpenRecordPage;
