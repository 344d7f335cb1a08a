import type { Metadata } from 'next';
import { say } from '#messages/en/staff/administration.ts';
import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { ClinicSettingsScreen } from '#ui/admin/clinic-settings-screen.tsx';

export const metadata: Metadata = { title: say('clinic-settings') };

const ClinicSettingsPage = async () => {
  const person = await requirePerson('clinician', 'administrator');
  const { admin } = await serverCaller();
  return (
    <AccountFrame person={person} current="/administration/settings">
      <ClinicSettingsScreen
        list={await admin.clinicSettings.list()}
        zone={(await (await serverCaller()).account.me()).zone}
      />
    </AccountFrame>
  );
};

export default ClinicSettingsPage;
