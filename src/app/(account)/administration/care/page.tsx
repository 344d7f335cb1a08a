import type { Metadata } from 'next';
import { say } from '#messages/en/staff/administration.ts';
import { requireAdministrator, serverCaller } from '#server/http/caller.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { CareSettingsScreen } from '#ui/admin/care-settings-screen.tsx';

export const metadata: Metadata = { title: say('care-settings') };

const CareSettingsPage = async () => {
  const person = await requireAdministrator();
  const { admin } = await serverCaller();
  return (
    <AccountFrame person={person} current="/administration/care">
      <CareSettingsScreen
        numbers={await admin.care.numbers()}
        {...(await admin.care.coveringClinician())}
        wordings={await admin.care.wordings()}
      />
    </AccountFrame>
  );
};

export default CareSettingsPage;
