import type { Metadata } from 'next';
import { interfaceRoot } from '#api/programs/exported.ts';
import { say } from '#messages/en/staff/administration/programs.ts';
import { requireAdministrator, serverCaller } from '#server/http/caller.ts';
import { ProgramsScreen } from '#ui/clinician/programs/programs-screen.tsx';
import { StaffFrame } from '../../staff-frame.tsx';

export const metadata: Metadata = { title: say('title') };

const ProgramsPage = async () => {
  const person = await requireAdministrator();
  const { admin, account } = await serverCaller();
  // Tokens hold by the system clock, which the demo’s is not.
  const clock = { zone: (await account.me()).zone, now: Date.now() };
  return (
    <StaffFrame person={person} current="/administration/programs">
      <ProgramsScreen
        tokens={await admin.programTokens.list()}
        questions={await admin.programTokens.questions()}
        document={`${interfaceRoot}/openapi.json`}
        clock={clock}
      />
    </StaffFrame>
  );
};

export default ProgramsPage;
