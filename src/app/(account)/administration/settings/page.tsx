import type { Metadata } from 'next';
import { say } from '#messages/en/staff/administration.ts';
import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { ClinicSettingsScreen } from '#ui/admin/clinic-settings-screen.tsx';
import { StaffFrame } from '../../staff-frame.tsx';

export const metadata: Metadata = { title: say('clinic-settings') };

const ClinicSettingsPage = async () => {
  const person = await requirePerson('clinician', 'administrator');
  const { admin, clinician } = await serverCaller();
  return (
    <StaffFrame person={person} current="/administration/settings">
      <ClinicSettingsScreen
        list={await admin.clinicSettings.list()}
        shortSigns={await clinician.shortSigns.state()}
        zone={(await (await serverCaller()).account.me()).zone}
      />
    </StaffFrame>
  );
};

export default ClinicSettingsPage;
