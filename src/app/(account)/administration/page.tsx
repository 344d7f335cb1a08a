import type { Metadata } from 'next';
import { say } from '#messages/en/staff/administration.ts';
import { requireAdministrator, serverCaller } from '#server/http/caller.ts';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import { AdministrationScreen } from '#ui/admin/administration-screen.tsx';

export const metadata: Metadata = { title: say('staff-and-sites') };

const AdministrationPage = async () => {
  const person = await requireAdministrator();
  const { admin } = await serverCaller();
  const people = await admin.staff.list();
  return (
    <AccountFrame person={person} current="/administration">
      <AdministrationScreen
        people={people.map(({ deactivatedAt, startingUntil, ...line }) => ({
          ...line,
          isActive: deactivatedAt === null,
          hasOwnPassphrase: startingUntil === null,
          isSelf: line.id === person.userId,
        }))}
        sites={await admin.sites.list()}
      />
    </AccountFrame>
  );
};

export default AdministrationPage;
