import type { Metadata } from 'next';
import { say } from '#messages/en/staff/administration.ts';
import { requireAdministrator, serverCaller } from '#server/http/caller.ts';
import { CareSettingsScreen } from '#ui/admin/care-settings-screen.tsx';
import { StaffFrame } from '../../staff-frame.tsx';

export const metadata: Metadata = { title: say('care-settings') };

const CareSettingsPage = async () => {
  const person = await requireAdministrator();
  const { admin } = await serverCaller();
  return (
    <StaffFrame person={person} current="/administration/care">
      <CareSettingsScreen
        numbers={await admin.care.numbers()}
        {...(await admin.care.coveringClinician())}
        wordings={await admin.care.wordings()}
        questionnaires={await admin.questionnaires.list()}
      />
    </StaffFrame>
  );
};

export default CareSettingsPage;
