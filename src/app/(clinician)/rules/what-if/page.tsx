import type { Metadata } from 'next';
import { say } from '#messages/en/staff/review/what-if.ts';
import { ClinicWhatIf } from '#ui/clinician/what-if/clinic-what-if.tsx';
import { clinicPage } from '../../clinic-page.ts';
import { CoveredFrame } from '../../covered-frame.tsx';

export const metadata: Metadata = { title: say('title') };

const ClinicWhatIfPage = async () => {
  const { person, clinician } = await clinicPage();
  return (
    <CoveredFrame place="/calculations" name={person.name}>
      <ClinicWhatIf settings={await clinician.replay.settings()} />
    </CoveredFrame>
  );
};

export default ClinicWhatIfPage;
