import type { Metadata } from 'next';
import { say } from '#messages/en/staff/groups/hours.ts';
import { RosterScreen } from '#ui/clinician/groups/roster-screen.tsx';
import { askedText } from '../../../../asked-text.ts';
import { clinicPage } from '../../../clinic-page.ts';
import { CoveredFrame } from '../../../covered-frame.tsx';
import { orNotFound } from '../../or-not-found.ts';

export const metadata: Metadata = { title: say('title') };

interface Props {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<{ readonly name?: string | string[] }>;
}

const RosterPage = async ({ params, searchParams }: Props) => {
  const { person, clinician, clock } = await clinicPage();
  const { id: hourId } = await params;
  const typed = askedText((await searchParams).name);
  const hour = await orNotFound(clinician.groupHours.get({ hourId }));
  return (
    <CoveredFrame place="/groups" name={person.name}>
      <RosterScreen
        hour={hour}
        clinicians={await clinician.groupHours.clinicians()}
        found={await clinician.people.list({ name: typed })}
        typed={typed}
        clock={clock}
      />
    </CoveredFrame>
  );
};

export default RosterPage;
