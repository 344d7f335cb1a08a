import type { Metadata } from 'next';
import { RulesScreen } from '#ui/clinician/rules/rules-screen.tsx';
import { clinicPage } from '../clinic-page.ts';
import { CoveredFrame } from '../covered-frame.tsx';

export const metadata: Metadata = { title: 'Rules' };

const RulesPage = async () => {
  const { person, clinician } = await clinicPage();
  return (
    <CoveredFrame place="/calculations" name={person.name}>
      <RulesScreen table={await clinician.rules.list()} invented={await clinician.inventedPeople.get()} />
    </CoveredFrame>
  );
};

export default RulesPage;
