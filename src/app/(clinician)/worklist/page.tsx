import type { Metadata } from 'next';
import { ClinicFrame } from '#ui/clinician/clinic-frame.tsx';
import { WorklistScreen } from '#ui/clinician/worklist/worklist-screen.tsx';
import { clinicPage } from '../clinic-page.ts';

export const metadata: Metadata = { title: 'Worklist' };

const WorklistPage = async () => {
  const { person, staff, clock } = await clinicPage();
  return (
    <ClinicFrame place="/worklist" name={person.name}>
      <WorklistScreen list={await staff.worklist.list()} clock={clock} />
    </ClinicFrame>
  );
};

export default WorklistPage;
