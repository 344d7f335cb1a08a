import type { Metadata } from 'next';
import { ClinicFrame } from '#ui/clinician/clinic-frame.tsx';
import { RulesScreen } from '#ui/clinician/rules/rules-screen.tsx';
import { clinicPage } from '../clinic-page.ts';

export const metadata: Metadata = { title: 'Rules' };

const RulesPage = async () => {
  const { person, clinician } = await clinicPage();
  return (
    <ClinicFrame place="/calculations" name={person.name}>
      <RulesScreen table={await clinician.rules.list()} />
    </ClinicFrame>
  );
};

export default RulesPage;
