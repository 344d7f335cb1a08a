/**
 * Hands on the incidents of a clinic as a file, the one the page gives, for whoever keeps them elsewhere on a
 * schedule. Nobody is named in it: whoever runs the server opens no record. That it was made stands in the audit.
 */
import { existsSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { toldTo } from '#api/clinician/incidents/about-whom.ts';
import { incidentFile } from '#api/clinician/incidents/incident-file.ts';
import { digestOfIds, flushReads, noteRead } from '#data/audit/audit.ts';
import { dayAt } from '#data/civil-time.ts';
import { incidentsOf } from '#data/clinic/incidents.ts';
import { clinicIds } from '#data/patients/people.ts';
import { onClinicFile } from '#server/command-access.ts';
import { type Runtime, zoneOf } from '#server/runtime.ts';
import { CannotGoOn } from '../say.mjs';

const usage = 'Usage: DATABASE_FILE=… npm run incidents -- --to FILE [--clinic ID]';

const askedIn = (args: readonly string[]): { readonly to: string; readonly clinic: string | null } => {
  try {
    const options = { to: { type: 'string' }, clinic: { type: 'string' } } as const;
    const { to, clinic = null } = parseArgs({ args: [...args], options }).values;
    if (to) return { to, clinic };
  } catch {
    // Said below, as for what is missing.
  }
  throw new CannotGoOn(usage, 2);
};

const clinicAsked = async ({ store }: Runtime, clinic: string | null): Promise<string> => {
  const all = await clinicIds(store);
  const [only] = clinic === null ? all : all.filter((one) => one === clinic);
  if (only !== undefined && (clinic !== null || all.length === 1)) return only;
  throw new CannotGoOn(`Name one of the clinics of this file with --clinic: ${all.join(', ')}.`, 2);
};

const fileOf = async (at: Runtime, clinicId: string): Promise<string> => {
  const now = at.clock.now();
  const day = dayAt(now, await zoneOf(at, clinicId));
  const who = { actorId: 'incidents', actorName: 'Whoever runs the server' };
  const access = { store: at.store, auditKey: at.keys.audit, clinicId, ...who, now, day };
  const incidents = await incidentsOf(access);
  const ids = incidents.map((one) => one.id);
  noteRead(access, { subject: 'incident-file', detail: { count: ids.length, ids: digestOfIds(ids) } });
  // Before a word leaves the file: what cannot be written down is not handed on.
  await flushReads(at.store);
  return incidentFile(await toldTo({ role: 'administrator' }, access, incidents));
};

export const run = async (args: readonly string[]): Promise<number> => {
  const { to, clinic } = askedIn(args);
  return onClinicFile(async (at) => {
    if (existsSync(to)) throw new CannotGoOn(`${to} is there already. Name a file that is not.`, 2);
    const text = await fileOf(at, await clinicAsked(at, clinic));
    writeFileSync(to, text, { mode: 0o600, flag: 'wx' });
    console.log(`incidents ${to}`);
    return 0;
  });
};
