import type { Metadata } from 'next';
import { RulesFollowedView } from '#ui/clinician/rules/followed/rules-followed.tsx';
import { clinicPage } from '../../clinic-page.ts';
import { CoveredFrame } from '../../covered-frame.tsx';

export const metadata: Metadata = { title: 'What followed each rule' };

const RulesFollowedPage = async () => {
  const { person, clinician } = await clinicPage();
  return (
    <CoveredFrame place="/calculations" name={person.name}>
      <RulesFollowedView answer={await clinician.rules.followed()} />
    </CoveredFrame>
  );
};

export default RulesFollowedPage;
