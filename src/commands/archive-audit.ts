/**
 * Moves audit rows older than the clinic's own years out of the database, into a file beside it. The
 * chain is verified first and stays one that can be verified. Run by whoever runs the server, when the
 * clinic wants it: nothing moves by itself, so that nobody at a desk can make traces go away by
 * setting fewer years.
 */
import { archiveBefore, archiveFileOf, auditStoredSince } from '#data/audit/audit-archive.ts';
import { headsFileOf, readHeads } from '#data/audit/audit-heads.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { clinicIds } from '#data/patients/people.ts';
import { onClinicFile } from '#server/command-access.ts';
import type { Runtime } from '#server/runtime.ts';
import { CannotGoOn } from './say.mjs';

const archiveClinic = async (at: Runtime, clinicId: string): Promise<boolean> => {
  const { store, keys } = at;
  const heads = readHeads(headsFileOf(store.file), keys.auditKeys);
  const verdict = heads.ok ? await verifyChain(store, keys.auditKeys, clinicId, heads.heads) : null;
  if (!verdict?.ok) {
    console.log(`clinic ${clinicId}: not archived, the chain or its heads do not hold; run verify-audit`);
    return false;
  }
  const access = { store, auditKey: keys.audit, clinicId, actorId: 'archive-audit', now: at.clock.now() };
  const before = await auditStoredSince(access);
  let moved = await archiveBefore(access, before);
  if (!moved) console.log(`clinic ${clinicId}: nothing is older than its years`);
  while (moved) {
    const file = archiveFileOf(store.file, moved);
    console.log(`clinic ${clinicId}: rows up to ${moved.lastSequence} are in ${file}`);
    moved = moved.isFull ? await archiveBefore(access, before) : null;
  }
  return true;
};

export const run = async (args: readonly string[]): Promise<number> => {
  if (args.length > 0) throw new CannotGoOn('Usage: DATABASE_FILE=… npm run archive-audit', 2);
  return onClinicFile(async (at) => {
    let findings = 0;
    for (const clinicId of await clinicIds(at.store)) {
      findings += (await archiveClinic(at, clinicId)) ? 0 : 1;
    }
    return findings > 0 ? 1 : 0;
  });
};
