/** What other settings would have said of everybody of the clinic, as a page shows it: counts, and days by name. */
import { z } from 'zod';
import type { Access } from '#data/access.ts';
import { digestOfIds, noteRead } from '#data/audit/audit.ts';
import { namesOpenToMe } from '#data/clinic/incidents.ts';
import type { Moved } from '#data/replay/gather-anew.ts';
import type { ClinicWhatIf } from '#data/replay/what-if.ts';
import { whatIfOnThread } from '#data/replay/what-if-jobs.ts';
import { Problem } from '../../errors.ts';
import type { Person } from '../../person.ts';
import { countsOf, lineOf } from './shown.ts';

/** By which whoever asked hears how far it is, and stops it. */
export const jobName = z.string().min(1).max(64);

/** Most lines shown by name; the counts are of all. */
const mostLines = 200;

/** Days of those alone whose records the caller may open; how many people are kept to other care teams is said. */
const linesOf = async (access: Access, { days }: ClinicWhatIf) => {
  const told = days.filter(({ way }) => way !== 'other');
  const people = new Set(told.map(({ patientId }) => patientId));
  const names = await namesOpenToMe(access, [...people]);
  const shown = told.filter(({ patientId }) => names.has(patientId)).slice(-mostLines);
  const ids = shown.map(({ patientId }) => patientId);
  noteRead(access, { subject: 'what-if', detail: { count: ids.length, ids: digestOfIds(ids) } });
  const lines = shown.map((one) => lineOf(one, one.patientId, names.get(one.patientId) ?? ''));
  return { lines, closed: people.size - names.size };
};

/** Who is no clinician gets the counts and no names. */
export const whatIfOfEverybody = async (
  { access, person }: { readonly access: Access; readonly person: Person },
  moved: Moved,
  weeks: number,
  job: string,
) => {
  const found = await whatIfOnThread(access, { moved, weeks }, job);
  if (!found) throw new Problem('conflict', 'It was stopped, and nothing was worked out.');
  const told = person.role === 'clinician' ? await linesOf(access, found) : { lines: [], closed: 0 };
  return { ...countsOf(found), patients: found.patients, ...told };
};
