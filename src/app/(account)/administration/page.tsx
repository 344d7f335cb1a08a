import type { Metadata } from 'next';
import { say } from '#messages/en/staff/administration.ts';
import { requireAdministrator, serverCaller } from '#server/http/caller.ts';
import { AdministrationScreen } from '#ui/admin/administration-screen.tsx';
import { StaffFrame } from '../staff-frame.tsx';

export const metadata: Metadata = { title: say('staff-and-sites') };

const AdministrationPage = async () => {
  const person = await requireAdministrator();
  const { admin } = await serverCaller();
  const people = await admin.staff.list();
  return (
    <StaffFrame person={person} current="/administration">
      <AdministrationScreen
        people={people.map(({ deactivatedAt, startingUntil, ...line }) => ({
          ...line,
          isActive: deactivatedAt === null,
          hasOwnPassphrase: startingUntil === null,
          isSelf: line.id === person.userId,
        }))}
        jobs={await admin.firstDay.list()}
        sites={await admin.sites.list()}
      />
    </StaffFrame>
  );
};

export default AdministrationPage;
