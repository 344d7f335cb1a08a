/**
 * Says of one stored decision what it was taken from: facts, rules, sources and choices, and whether it comes out
 * the same today; or gives its certificate, which `verify-certificate` reads. It tells of a record, so that it was
 * asked stands in the audit as an opening.
 */
import { parseArgs } from 'node:util';
import { explainInFull } from '#core/decision/explain-stored.ts';
import type { Access } from '#data/access.ts';
import { flushReads, noteRead } from '#data/audit/audit.ts';
import { dayAt } from '#data/civil-time.ts';
import { certificateOf, certificateText } from '#data/decision/certificate/certificate.ts';
import { ownerOfDecision } from '#data/decision/decisions.ts';
import { decisionById } from '#data/decision/replayable-decisions.ts';
import { clinicOf } from '#data/patients/people.ts';
import { onClinicFile } from '#server/command-access.ts';
import { CannotGoOn } from './say.mjs';

const usage = 'Usage: DATABASE_FILE=… npm run --silent explain -- --decision ID [--certificate]';

const askedIn = (args: readonly string[]): { readonly id: string; readonly asCertificate: boolean } => {
  const options = { decision: { type: 'string' }, certificate: { type: 'boolean' } } as const;
  try {
    const { decision: id, certificate = false } = parseArgs({ args: [...args], options }).values;
    if (id) return { id, asCertificate: certificate };
  } catch {
    // Said below, as for one that is not named.
  }
  throw new CannotGoOn(usage, 2);
};

const tellInFull = async (access: Access, patientId: string, id: string): Promise<number> => {
  const stored = await decisionById(access, patientId, id);
  console.log(`clinic ${access.clinicId}, patient ${patientId}`);
  for (const line of explainInFull(stored!)) console.log(line);
  return 0;
};

const tellCertificate = async (access: Access, patientId: string, id: string): Promise<number> => {
  const certified = await certificateOf(access, patientId, id);
  if (!certified.ok)
    throw new CannotGoOn(
      'The audit row of this decision is not in the file: it was archived. Nothing seals it here.',
    );
  console.log(certificateText(certified.certificate).trimEnd());
  return 0;
};

export const run = async (args: readonly string[]): Promise<number> => {
  const { id, asCertificate } = askedIn(args);
  return onClinicFile(async ({ store, keys, clock }) => {
    const owner = await ownerOfDecision(store, id);
    if (!owner) throw new CannotGoOn(`There is no decision ${id} in ${store.file}.`);
    const { clinicId, patientId } = owner;
    const zone = (await clinicOf(store, clinicId))?.zone ?? 'UTC';
    const now = clock.now();
    const actor = { actorId: 'explain', actorName: 'Explain' };
    const access = { store, auditKey: keys.audit, clinicId, now, day: dayAt(now, zone), ...actor };
    noteRead(access, { subject: 'explain.decision', subjectId: id, patientId });
    // Before a word is said: what cannot be written down is not shown.
    await flushReads(store);
    return asCertificate
      ? await tellCertificate(access, patientId, id)
      : await tellInFull(access, patientId, id);
  });
};
