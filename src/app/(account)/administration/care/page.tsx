import type { Metadata } from 'next';
import { say } from '#messages/en/staff/administration/clinic.ts';
import { requireAdministrator, serverCaller } from '#server/http/caller.ts';
import { CareSettingsScreen } from '#ui/admin/care-settings-screen.tsx';
import { StaffFrame } from '../../staff-frame.tsx';

export const metadata: Metadata = { title: say('page-title') };

const CareSettingsPage = async () => {
  const person = await requireAdministrator();
  const { admin } = await serverCaller();
  return (
    <StaffFrame person={person} current="/administration/care">
      <CareSettingsScreen
        details={await admin.clinicDetails.get()}
        {...(await admin.care.coveringClinician())}
        wordings={await admin.care.wordings()}
        questionnaires={await admin.questionnaires.list()}
      />
    </StaffFrame>
  );
};

export default CareSettingsPage;
