/**
 * A clinic group made once and kept: rows in bulk for what people logged, the product's own evaluation for
 * what follows from it, so that decisions, doses, audit rows and worklist are those the product would hold.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import { inRoot } from '#commands/paths.mjs';
import { say } from '#commands/say.mjs';
import type { Access } from '#data/access.ts';
import { migrateStore } from '#data/database/migrate.ts';
import type { Store } from '#data/database/store.ts';
import { evaluateRecord } from '#data/decision/evaluate.ts';
import { openStore } from '#data/open-store.ts';
import { createClinic } from '#data/patients/people.ts';
import { type Seeded, seeded } from '#simulation/raises/seeded.ts';
import { writeDecisions } from './decided-rows.ts';
import { logTables, writeRound } from './logged-rows.ts';
import { clinicId, dayOf, type GroupPlan, groupSeed, now, patientId, zone } from './plan.ts';
import type { Client } from './raw-rows.ts';
import { writeRowsInForce } from './rows-in-force.ts';

const migrations = inRoot('drizzle');
const groupSources = inRoot('src', 'commands', 'team', 'bench', 'group');
const patientsPerTransaction = 25;

export const accessTo = (store: Store, at = now): Access => ({
  store,
  auditKey: Buffer.alloc(32, 7),
  clinicId,
  actorId: 'bench-clinician',
  actorName: 'Bench Clinician',
  now: at,
  day: dayOf(at),
});

/**
 * A group made by another version of these files or from another baseline is made anew; one that only
 * lacks later schema steps is brought forward.
 */
const stamp = (): string => {
  const hash = createHash('sha256').update(readFileSync(path.join(migrations, '0000_baseline.sql')));
  for (const name of readdirSync(groupSources).sort()) {
    if (name.endsWith('.ts')) hash.update(readFileSync(path.join(groupSources, name)));
  }
  return hash.digest('hex').slice(0, 12);
};

const migrate = (store: Store): void => {
  const migrated = migrateStore(store, migrations, accessTo(store).auditKey);
  if (!migrated.ok) throw new Error(migrated.reason);
  // The copy made before a schema step is for people's records; a group can be made again.
  if (migrated.backup) rmSync(path.dirname(migrated.backup), { recursive: true });
};

const broughtForward = (file: string): string => {
  const store = openStore(file);
  try {
    migrate(store);
  } finally {
    store.close();
  }
  return file;
};

/** Indexes are made at the end, in one sort each, instead of row by row. */
const withoutIndexes = async (client: Client, work: () => Promise<void>): Promise<void> => {
  const bulk = "'training_session', 'set_log', 'session_joint', 'morning', 'morning_joint', 'decision'";
  const indexes = client
    .prepare(
      `SELECT name, sql FROM sqlite_master WHERE type = 'index' AND sql IS NOT NULL AND tbl_name IN (${bulk})`,
    )
    .all() as { name: string; sql: string }[];
  for (const { name } of indexes) client.exec(`DROP INDEX ${name}`);
  await work();
  for (const { name, sql } of indexes) {
    say(`  index ${name} …`);
    client.exec(sql);
    await turn();
  }
};

const writeLogs = async (client: Client, plan: GroupPlan, random: Seeded): Promise<void> => {
  const tables = logTables(client);
  for (let place = 0; place < plan.sessionsEach; place++) {
    client.exec('BEGIN');
    writeRound(tables, plan, place, random);
    client.exec('COMMIT');
    await turn();
    if ((place + 1) % 20 === 0) say(`  ${(place + 1) * plan.patients} sessions`);
  }
};

const settle = async (store: Store, plan: GroupPlan): Promise<void> => {
  const access = accessTo(store);
  for (let from = 0; from < plan.patients; from += patientsPerTransaction) {
    const until = Math.min(plan.patients, from + patientsPerTransaction);
    await store.write(async () => {
      for (let patient = from; patient < until; patient++)
        await evaluateRecord(access, patientId(patient), {
          cause: 'morning',
          sessionId: null,
          morningId: null,
        });
    });
    if (until % 1000 === 0) say(`  ${until} patients evaluated`);
    await turn();
  }
};

const fill = async (store: Store, plan: GroupPlan): Promise<void> => {
  const { client } = store.writer;
  const random = seeded(groupSeed);
  // A half-made file is thrown away, so nothing here needs to outlive a crash.
  client.pragma('synchronous = OFF');
  client.pragma('foreign_keys = OFF');
  client.pragma('cache_size = -262144');
  await createClinic(
    store,
    {
      id: clinicId,
      name: 'Bench clinic',
      zone,
      phone: '210 000 000',
      emergencyNumber: '112',
      urgentNumber: null,
      monitoringHours: [{ days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], from: '09:00', to: '17:00' }],
    },
    now,
  );
  client.exec('BEGIN');
  writeRowsInForce(client, plan, random);
  client.exec('COMMIT');
  await withoutIndexes(client, async () => {
    await writeLogs(client, plan, random);
    client.exec('BEGIN');
    writeDecisions(client, plan, random);
    client.exec('COMMIT');
  });
  await settle(store, plan);
  client.pragma('wal_checkpoint(TRUNCATE)');
};

const makeGroup = async (file: string, plan: GroupPlan): Promise<void> => {
  const store = openStore(file);
  try {
    migrate(store);
    await fill(store, plan);
  } finally {
    store.close();
  }
};

const withSides = (file: string) => [file, `${file}-wal`, `${file}-shm`];
export const removeFile = (file: string): void => {
  for (const one of withSides(file)) rmSync(one, { force: true });
};

export const benchFolder = inRoot('.local', 'bench');

/** The file of a group, made if it is not there yet. */
export const groupFile = async (plan: GroupPlan): Promise<string> => {
  mkdirSync(benchFolder, { recursive: true });
  const name = `group-${plan.patients}x${plan.sessionsEach}`;
  const file = path.join(benchFolder, `${name}.sqlite`);
  const stampFile = path.join(benchFolder, `${name}.stamp`);
  const wanted = stamp();
  const isMade = existsSync(file) && existsSync(stampFile) && readFileSync(stampFile, 'utf8') === wanted;
  if (isMade) return broughtForward(file);
  removeFile(file);
  rmSync(stampFile, { force: true });
  say(`making a clinic group of ${plan.patients} patients with ${plan.sessionsEach} sessions each …`);
  const began = performance.now();
  await makeGroup(file, plan);
  writeFileSync(stampFile, wanted);
  say(`made in ${Math.round((performance.now() - began) / 1000)} s`);
  return file;
};
