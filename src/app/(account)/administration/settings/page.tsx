import type { Metadata } from 'next';
import { say } from '#messages/en/staff/administration/settings.ts';
import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { SettingsScreen } from '#ui/admin/settings/settings-screen.tsx';
import { StaffFrame } from '../../staff-frame.tsx';

export const metadata: Metadata = { title: say('title') };

interface SettingsPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const SettingsPage = async ({ searchParams }: SettingsPageProps) => {
  const person = await requirePerson('clinician', 'administrator');
  const { account, admin, clinician } = await serverCaller();
  const list = await admin.clinicSettings.list();
  const { group, words } = await searchParams;
  const jobs = list.mayChange ? await admin.firstDay.list() : [];
  return (
    <StaffFrame person={person} current="/administration/settings">
      <SettingsScreen
        {...list}
        shortSigns={await clinician.shortSigns.state()}
        zone={(await account.me()).zone}
        start={{ group: String(group ?? ''), words: String(words ?? '') }}
        openJobs={jobs.filter(({ isDone }) => !isDone).length}
      />
    </StaffFrame>
  );
};

export default SettingsPage;
