import type { Metadata } from 'next';
import { say } from '#messages/en/staff/administration/figures.ts';
import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { ClinicFigures } from '#ui/clinician/learning/clinic-figures.tsx';
import { StaffFrame } from '../../staff-frame.tsx';

export const metadata: Metadata = { title: say('title') };

const FiguresPage = async () => {
  const person = await requirePerson('clinician', 'administrator');
  const { clinician } = await serverCaller();
  return (
    <StaffFrame person={person} current="/administration/figures">
      <ClinicFigures found={await clinician.learning.get()} />
    </StaffFrame>
  );
};

export default FiguresPage;
