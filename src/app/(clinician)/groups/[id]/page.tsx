import type { Metadata } from 'next';
import { say } from '#messages/en/staff/groups/hours.ts';
import { phoneEntriesKey } from '#server/phone-entries.ts';
import { runtime } from '#server/runtime.ts';
import { HourScreen } from '#ui/clinician/groups/hour-screen.tsx';
import { clinicPage } from '../../clinic-page.ts';
import { CoveredFrame } from '../../covered-frame.tsx';
import { orNotFound } from '../or-not-found.ts';

export const metadata: Metadata = { title: say('title') };

const HourPage = async ({ params }: { readonly params: Promise<{ readonly id: string }> }) => {
  const { person, clinician, clock } = await clinicPage();
  const { id: hourId } = await params;
  const hour = await orNotFound(clinician.groupHours.get({ hourId }));
  return (
    <CoveredFrame place="/groups" name={person.name}>
      <HourScreen
        hour={hour}
        people={await clinician.groupSessions.people({ hourId })}
        clock={clock}
        clinicKey={phoneEntriesKey(runtime().keys, person.clinicId)}
      />
    </CoveredFrame>
  );
};

export default HourPage;
