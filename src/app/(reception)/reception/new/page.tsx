import type { Metadata } from 'next';
import { say } from '#messages/en/staff/reception/reception.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { NewPatientForm } from '#ui/clinician/patients/new-patient-form.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { receptionPage } from '../../reception-page.ts';

export const metadata: Metadata = { title: say('add') };

const NewPersonPage = async () => {
  const { person } = await receptionPage();
  return (
    <AccountFrame person={person} current="/reception">
      <div className="stack-wide">
        <PageHeading caption={say('title')}>{say('add')}</PageHeading>
        <NewPatientForm desk="reception" />
      </div>
    </AccountFrame>
  );
};

export default NewPersonPage;
