import type { Metadata } from 'next';
import { say } from '#messages/en/staff/administration/machines.ts';
import { requireAdministrator, serverCaller } from '#server/http/caller.ts';
import { runtime } from '#server/runtime.ts';
import { MachinesScreen } from '#ui/clinician/machines/machines-screen.tsx';
import { StaffFrame } from '../../staff-frame.tsx';

export const metadata: Metadata = { title: say('title') };

const MachinesPage = async () => {
  const person = await requireAdministrator();
  const { admin, account } = await serverCaller();
  const clock = { zone: (await account.me()).zone, now: runtime().clock.now() };
  return (
    <StaffFrame person={person} current="/administration/machines">
      <MachinesScreen machines={await admin.machines.list()} clock={clock} />
    </StaffFrame>
  );
};

export default MachinesPage;
