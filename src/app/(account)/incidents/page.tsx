import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { say } from '#messages/en/staff/administration/incidents.ts';
import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { runtime } from '#server/runtime.ts';
import { CorrectScreen } from '#ui/clinician/incidents/correct-screen.tsx';
import { IncidentsScreen } from '#ui/clinician/incidents/incidents-screen.tsx';
import { StaffFrame } from '../staff-frame.tsx';
import { namedPatient } from './named-patient.ts';

export const metadata: Metadata = { title: say('title') };

interface IncidentsPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const IncidentsPage = async ({ searchParams }: IncidentsPageProps) => {
  const person = await requirePerson('clinician', 'administrator');
  const { account, clinician } = await serverCaller();
  const { patient: asked, correct } = await searchParams;
  const patient = await namedPatient(asked);
  const incidents = await clinician.incidents.list();
  const clock = { zone: (await account.me()).zone, now: runtime().clock.now() };
  const incident = correct === undefined ? null : incidents.find(({ id }) => id === correct);
  if (incident === undefined) notFound();
  return (
    <StaffFrame person={person} current="/incidents">
      {incident ? (
        <CorrectScreen incident={incident} patient={asked === undefined ? asked : patient} clock={clock} />
      ) : (
        <IncidentsScreen {...{ incidents, patient, clock }} mayName={person.role === 'clinician'} />
      )}
    </StaffFrame>
  );
};

export default IncidentsPage;
