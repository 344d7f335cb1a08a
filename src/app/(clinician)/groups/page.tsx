import type { Metadata } from 'next';
import { say } from '#messages/en/staff/groups/hours.ts';
import { GroupHoursScreen } from '#ui/clinician/groups/group-hours-screen.tsx';
import { clinicPage } from '../clinic-page.ts';
import { CoveredFrame } from '../covered-frame.tsx';

export const metadata: Metadata = { title: say('title') };

const GroupsPage = async () => {
  const { person, clinician, clock } = await clinicPage();
  return (
    <CoveredFrame place="/groups" name={person.name}>
      <GroupHoursScreen
        hours={await clinician.groupHours.list()}
        clinicians={await clinician.groupHours.clinicians()}
        clock={clock}
      />
    </CoveredFrame>
  );
};

export default GroupsPage;
