/** Whom an incident is about, as far as whoever asks may know the name. */
import type { Person } from '#api/person.ts';
import type { IncidentEntry, IncidentOnRecord } from '#core/clinic/incident.ts';
import type { Access } from '#data/access.ts';
import { namesOpenToMe } from '#data/clinic/incidents.ts';

/** "unnamed": about a patient whose name is not shown to this person, or who was erased. */
export type AboutWhom =
  | { readonly is: 'nobody' | 'unnamed' }
  | { readonly is: 'named'; readonly patientId: string; readonly name: string };

export type ToldEntry = Omit<IncidentEntry, 'incidentId' | 'patientId'> & { readonly about: AboutWhom };

export interface ToldIncident extends Omit<IncidentOnRecord, 'entry' | 'earlier'> {
  readonly entry: ToldEntry;
  readonly earlier: readonly ToldEntry[];
}

const entriesIn = ({ entry, earlier }: IncidentOnRecord) => [...earlier, entry];

/** Records are for clinicians: to an administrator who is none, nobody is named. */
export const toldTo = async (
  person: Pick<Person, 'role'>,
  access: Access,
  incidents: readonly IncidentOnRecord[],
): Promise<readonly ToldIncident[]> => {
  const ids = incidents.flatMap(entriesIn).flatMap(({ patientId }) => patientId ?? []);
  const names = person.role === 'clinician' ? await namesOpenToMe(access, ids) : new Map<string, string>();
  const aboutOf = (patientId: string | null): AboutWhom => {
    if (patientId === null) return { is: 'nobody' };
    const name = names.get(patientId);
    return name === undefined ? { is: 'unnamed' } : { is: 'named', patientId, name };
  };
  const told = ({ incidentId: _incident, patientId, ...entry }: IncidentEntry): ToldEntry => ({
    ...entry,
    about: aboutOf(patientId),
  });
  return incidents.map(({ entry, earlier, ...rest }) => ({
    ...rest,
    entry: told(entry),
    earlier: earlier.map(told),
  }));
};
