/**
 * Says of one stored decision what it was taken from: facts, rules, sources and choices, and whether it comes out
 * the same today. It tells of a record, so that it was asked stands in the audit as an opening.
 */
import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { explainInFull } from '#core/decision/explain-stored.ts';
import { flushReads, noteRead } from '#data/audit/audit.ts';
import { dayAt } from '#data/civil-time.ts';
import { ownerOfDecision } from '#data/decision/decisions.ts';
import { decisionById } from '#data/decision/replayable-decisions.ts';
import { clinicOf } from '#data/patients/people.ts';
import { openRuntime } from '#server/runtime.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';

const usage = 'Usage: DATABASE_FILE=… npm run --silent explain -- --decision ID';

const idIn = (args: readonly string[]): string => {
  try {
    const { decision } = parseArgs({ args: [...args], options: { decision: { type: 'string' } } }).values;
    if (decision) return decision;
  } catch {
    // Said below, as for one that is not named.
  }
  throw new CannotGoOn(usage, 2);
};

export const run = async (args: readonly string[]): Promise<number> => {
  const id = idIn(args);
  const settings = readEnvironment();
  const file = settings.DATABASE_FILE;
  if (!existsSync(file)) throw new CannotGoOn(`The database file ${file} does not exist.`, 2);
  const { store, keys, clock } = openRuntime(settings);
  try {
    const owner = await ownerOfDecision(store, id);
    if (!owner) throw new CannotGoOn(`There is no decision ${id} in ${file}.`);
    const { clinicId, patientId } = owner;
    const zone = (await clinicOf(store, clinicId))?.zone ?? 'UTC';
    const now = clock.now();
    const actor = { actorId: 'explain', actorName: 'Explain' };
    const access = { store, auditKey: keys.audit, clinicId, now, day: dayAt(now, zone), ...actor };
    noteRead(access, { subject: 'explain.decision', subjectId: id, patientId });
    // Before a word is said: what cannot be written down is not shown.
    await flushReads(store);
    const stored = await decisionById(access, patientId, id);
    console.log(`clinic ${clinicId}, patient ${patientId}`);
    for (const line of explainInFull(stored!)) console.log(line);
    return 0;
  } finally {
    store.close();
  }
};
