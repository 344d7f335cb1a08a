import type { Metadata } from 'next';
import { requirePerson } from '#server/http/caller.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { EmergencyAccessForm } from '#ui/clinician/access/emergency-access-form.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';

export const metadata: Metadata = { title: 'Open a record' };

interface Props {
  readonly params: Promise<{ readonly id: string }>;
}

const OpenRecordPage = async ({ params }: Props) => {
  const person = await requirePerson('clinician');
  return (
    <AccountFrame person={person} current="/patients">
      <div className="stack-wide">
        <PageHeading caption="Patients">Only the care team can open this record</PageHeading>
        <p>
          You can open it for a few hours if you give a reason. The team sees your name and reason on the
          worklist. The patient sees them in the list of who opened the record.
        </p>
        <EmergencyAccessForm patientId={(await params).id} />
      </div>
    </AccountFrame>
  );
};

export default OpenRecordPage;
