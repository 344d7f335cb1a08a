import type { Metadata } from 'next';
import { say } from '#messages/en/staff/review/followed.ts';
import { RulesFollowedView } from '#ui/clinician/rules/followed/rules-followed.tsx';
import { clinicPage } from '../../clinic-page.ts';
import { CoveredFrame } from '../../covered-frame.tsx';

export const metadata: Metadata = { title: say('title') };

const RulesFollowedPage = async () => {
  const { person, clinician } = await clinicPage();
  return (
    <CoveredFrame place="/calculations" name={person.name}>
      <RulesFollowedView answer={await clinician.rules.followed()} />
    </CoveredFrame>
  );
};

export default RulesFollowedPage;
